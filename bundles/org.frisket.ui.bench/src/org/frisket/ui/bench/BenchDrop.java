package org.frisket.ui.bench;

import org.frisket.geometry.Point;

/**
 * What may be dropped on a bench. It is dragged as the one thing selected in JFace's local selection transfer, so that
 * the bench need not know where it comes from.
 */
public interface BenchDrop {

	/**
	 * It was let go over a bench. Only for the UI thread; what takes long comes later, through {@link
	 * JobOnBench#edits()}.
	 *
	 * @param place in mm
	 */
	void dropped(JobOnBench bench, Point place);
}
