package org.frisket.typography;

import org.frisket.typography.internal.shape.Shaping;

/**
 * How a stretch of text is set.
 *
 * @param capHeight in mm
 * @param span      number of the span it comes from, -1 for none
 */
record TextStyle(FontFace face, double capHeight, Shaping shaping, int span) {

	/** mm for a font unit. */
	double scale() {
		return capHeight / face.capHeight();
	}
}
