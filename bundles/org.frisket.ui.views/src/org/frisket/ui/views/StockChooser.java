package org.frisket.ui.views;

import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.frisket.model.Layer;
import org.frisket.ui.bench.JobOnBench;

/**
 * Lets the stock of a layer be chosen from what the studio has. The stack adapts to one where a bundle brings it, and has
 * the stock typed where none does.
 */
public interface StockChooser {

	/**
	 * Opens what can be chosen. What is chosen is one step of undo of the job; nothing happens if nothing is.
	 *
	 * @param place of the control, under which it opens
	 */
	void choose(JobOnBench bench, Layer layer, Control control, Rectangle place);
}
