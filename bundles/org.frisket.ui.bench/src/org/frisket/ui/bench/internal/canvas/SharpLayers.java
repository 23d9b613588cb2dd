package org.frisket.ui.bench.internal.canvas;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.ScalableFreeformLayeredPane;

/**
 * Layers that scale on the window system's own graphics. The scaled graphics of draw2d know no paths and round every
 * coordinate; this keeps curves exact at every zoom.
 */
public final class SharpLayers extends ScalableFreeformLayeredPane {

	@Override
	protected void paintClientArea(Graphics graphics) {
		if (getChildren().isEmpty()) {
			return;
		}
		graphics.pushState();
		graphics.scale((float) getScale(), (float) getScale());
		// every child ends by going back to the state pushed last, which has to be the scaled one
		graphics.pushState();
		paintChildren(graphics);
		graphics.popState();
		graphics.popState();
	}
}
