/**
 * Holding what is dragged on the bench. Any tracker asks {@link org.frisket.ui.bench.internal.snap.Snapping} when a drag
 * begins, then {@link org.frisket.ui.bench.internal.snap.SnapDrag} at every step.
 */
package org.frisket.ui.bench.internal.snap;
