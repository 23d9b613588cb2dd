/**
 * The bench: the job on a measured, zoomable surface, edited directly. Open one with {@link
 * org.frisket.ui.bench.JobInput}; other parts of the screen reach the edits of its job through the
 * {@code EditExecutor} that the editor adapts to. All of GEF stays inside.
 */
package org.frisket.ui.bench;
