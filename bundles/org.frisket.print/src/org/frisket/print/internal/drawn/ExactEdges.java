package org.frisket.print.internal.drawn;

import java.awt.RenderingHints;

/** How art is drawn: edges are found again by how much of each pixel is covered, so they must not be moved to the pixels. */
final class ExactEdges {

	private ExactEdges() {
	}

	static RenderingHints hints() {
		RenderingHints hints = new RenderingHints(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		hints.put(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		hints.put(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
		hints.put(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
		return hints;
	}
}
