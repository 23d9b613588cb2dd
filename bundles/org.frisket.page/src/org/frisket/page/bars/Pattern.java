package org.frisket.page.bars;

import java.util.ArrayList;
import java.util.List;

/** What a part of a bar is filled with. */
public enum Pattern {

	SOLID, RISING, LEVEL, CROSSED, EMPTY;

	/** A line from one point to another. */
	public record Stroke(double x1, double y1, double x2, double y2) {
	}

	/** The pattern of a part; they come again after the last. */
	public static Pattern of(int part) {
		return values()[part % values().length];
	}

	/** The lines within a box, by how far they are apart. Their places do not hang on where the box is. */
	public List<Stroke> strokes(double x, double y, double width, double height, double step) {
		List<Stroke> strokes = new ArrayList<>();
		switch (this) {
		case RISING -> diagonals(x, y, width, height, step, true, strokes);
		case LEVEL -> {
			for (double at = step; at < height; at += step) {
				strokes.add(new Stroke(x, y + at, x + width, y + at));
			}
		}
		case CROSSED -> {
			diagonals(x, y, width, height, step, true, strokes);
			diagonals(x, y, width, height, step, false, strokes);
		}
		default -> {
			// nothing within
		}
		}
		return strokes;
	}

	private static void diagonals(double x, double y, double width, double height, double step, boolean rising,
			List<Stroke> strokes) {
		for (double at = step; at < width + height; at += step) {
			double left = Math.max(0, at - height);
			double right = Math.min(width, at);
			double one = at - left;
			double other = at - right;
			strokes.add(rising ? new Stroke(x + left, y + one, x + right, y + other)
					: new Stroke(x + left, y + height - one, x + right, y + height - other));
		}
	}
}
