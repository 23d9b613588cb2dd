/** What edits of several rooms ask of a job. */
package org.frisket.editing.internal;
