package org.frisket.ui.bench.internal.canvas;

import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.SWT;

/** Painting in pixels inside layers that are scaled, so that a line has the same width at every zoom. */
public final class PixelSpace {

	private PixelSpace() {
	}

	/**
	 * Paints with the scale undone: one unit is one pixel, and a place in figure units lies at {@code zoom} times its
	 * coordinates.
	 */
	public static void paint(Graphics graphics, double zoom, Runnable painter) {
		graphics.pushState();
		graphics.scale((float) (1 / zoom), (float) (1 / zoom));
		graphics.setAntialias(SWT.ON);
		painter.run();
		graphics.popState();
	}
}
