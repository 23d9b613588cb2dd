package org.frisket.material.trials;

import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Transform;
import org.frisket.geometry.shapes.ShapePath;

/**
 * The shapes of one trial: a square of 10 mm with a triangle in it (do corners meet, does the piece lift out), a circle
 * (does the blade follow), bars of 0.5, 1 and 1.5 mm (from where on they tear) and two letters with strokes of 1 mm. The
 * square with a triangle is common practice, no source; the rest is ours.
 */
final class TestPattern {

	static final double WIDTH = 20.5;
	static final double HEIGHT = 10;

	/** The counter-clockwise square holds the clockwise triangle as a hole. */
	private static final String TRIANGLE = "M5 2L8.5 8L1.5 8Z";
	private static final String LETTER_L = "M0 0L0 4.5L2.5 4.5L2.5 3.5L1 3.5L1 0Z";
	private static final String LETTER_E = "M0 0L0 4.8L2.5 4.8L2.5 3.8L1 3.8L1 2.9L2 2.9L2 1.9L1 1.9L1 1L2.5 1L2.5 0Z";

	private TestPattern() {
	}

	/** The shapes with their upper left corner at a place, y down. */
	static Outline at(double x, double y) {
		return part(ShapePath.rectangle(10, 10), 0, 0).plus(part(TRIANGLE, 0, 0))
				.plus(part(ShapePath.ellipse(4.5, 4.5), 12, 0)).plus(part(ShapePath.rectangle(0.5, 4.5), 11.5, 5.5))
				.plus(part(ShapePath.rectangle(1, 4.5), 13.2, 5.5)).plus(part(ShapePath.rectangle(1.5, 4.5), 15.4, 5.5))
				.plus(part(LETTER_L, 18, 0)).plus(part(LETTER_E, 18, 5.2))
				.transformed(Transform.translation(x, y));
	}

	private static Outline part(String path, double x, double y) {
		return PathData.parse(path).transformed(Transform.translation(x, y));
	}
}
