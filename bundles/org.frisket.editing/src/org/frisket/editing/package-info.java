/**
 * Changes to a job as named edits that can be undone. Screen and command line both change jobs in this way only: an
 * {@link org.frisket.editing.Edit} is made, and handed to the {@link org.frisket.editing.EditExecutor} of the document.
 * The edits themselves are in rooms by what they change.
 */
package org.frisket.editing;
