package org.frisket.imports.svg;

import org.frisket.geometry.Transform;

/**
 * Where an element stands: its style and frame.
 *
 * @param bare whether shapes count as they are, however they are painted: so they do in clip paths
 */
record Scope(Transform toMm, Style style, Lengths lengths, boolean bare) {

	Scope(Transform toMm, Style style, Lengths lengths) {
		this(toMm, style, lengths, false);
	}

	/** Length of a pixel in mm; 0 where the frame is flattened. */
	double pixel() {
		return Math.sqrt(Math.abs(toMm.determinant()));
	}

	/** The same style in another frame. */
	Scope in(Transform frame, Lengths newLengths) {
		return new Scope(frame, style, newLengths, bare);
	}
}
