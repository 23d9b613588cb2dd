package org.frisket.ui.views;

import org.frisket.model.Layer;
import org.frisket.ui.bench.JobOnBench;

/**
 * What may be dropped on a layer of the stack. It is dragged as the one thing selected in JFace's local selection
 * transfer, so that the stack need not know where it comes from.
 */
public interface LayerDrop {

	/** It was let go over a layer. Only for the UI thread. */
	void dropped(JobOnBench bench, Layer layer);
}
