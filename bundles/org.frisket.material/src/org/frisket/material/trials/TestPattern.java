package org.frisket.material.trials;

import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Transform;
import org.frisket.geometry.shapes.ShapePath;

/**
 * The shapes of one trial: a square with a triangle in it (do corners meet, does the piece lift out), a circle (does the
 * blade follow), bars of 0.5, 1 and 1.5 mm (from where on they tear) and two letters with strokes of a tenth of the
 * square. The bars are as wide in every size. The square with a triangle is common practice, no source; the rest is ours.
 *
 * @param size side of the square in mm
 */
record TestPattern(double size) {

	/** The usual side of the square, in mm. */
	static final double USUAL = 10;
	/** What was drawn for the usual side is drawn so many times as large. */
	private static final double[] BARS = { 0.5, 1, 1.5 };
	private static final double BETWEEN = 1.2;
	private static final double[] TRIANGLE = { 5, 2, 8.5, 8, 1.5, 8 };
	private static final double[] LETTER_L = { 0, 0, 0, 4.5, 2.5, 4.5, 2.5, 3.5, 1, 3.5, 1, 0 };
	private static final double[] LETTER_E = { 0, 0, 0, 4.8, 2.5, 4.8, 2.5, 3.8, 1, 3.8, 1, 2.9, 2, 2.9, 2, 1.9, 1, 1.9, 1,
			1, 2.5, 1, 2.5, 0 };

	private double scale() {
		return size / USUAL;
	}

	private double barsAt() {
		return size + 1.5;
	}

	private double lettersAt() {
		double bars = BARS[0] + BARS[1] + BARS[2] + 2 * BETWEEN;
		return barsAt() + Math.max(bars, 0.5 + 4.5 * scale()) + 1.1;
	}

	double width() {
		return lettersAt() + 2.5 * scale();
	}

	double height() {
		return size;
	}

	/** The shapes with their upper left corner at a place, y down. The square holds the triangle as a hole. */
	Outline at(double x, double y) {
		double half = 4.5 * scale();
		Outline all = part(ShapePath.rectangle(size, size), 0, 0).plus(part(drawn(TRIANGLE), 0, 0))
				.plus(part(ShapePath.ellipse(half, half), barsAt() + 0.5, 0));
		double left = barsAt();
		for (double bar : BARS) {
			all = all.plus(part(ShapePath.rectangle(bar, half), left, size - half));
			left += bar + BETWEEN;
		}
		return all.plus(part(drawn(LETTER_L), lettersAt(), 0)).plus(part(drawn(LETTER_E), lettersAt(), 5.2 * scale()))
				.transformed(Transform.translation(x, y));
	}

	private String drawn(double[] corners) {
		StringBuilder path = new StringBuilder();
		for (int i = 0; i < corners.length; i += 2) {
			path.append(i == 0 ? 'M' : 'L').append(Sweep.plain(corners[i] * scale())).append(' ')
					.append(Sweep.plain(corners[i + 1] * scale()));
		}
		return path.append('Z').toString();
	}

	private static Outline part(String path, double x, double y) {
		return PathData.parse(path).transformed(Transform.translation(x, y));
	}
}
