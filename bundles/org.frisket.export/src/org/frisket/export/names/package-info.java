/**
 * What files that are handed out are called: a {@link org.frisket.export.names.NamePattern} with fields for the job, the
 * sheet and the machine gives each a name that every file system takes.
 */
package org.frisket.export.names;
