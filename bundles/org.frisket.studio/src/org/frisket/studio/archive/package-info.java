/**
 * A studio as one file: all tables of its database, whichever kind it is, and what lies in its folder
 * ({@link org.frisket.studio.archive.StudioArchive}).
 */
package org.frisket.studio.archive;
