package org.frisket.typography.join;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.Gap;
import org.frisket.geometry.measure.PieceLocator;

/**
 * A straight bar that ties two pieces together.
 *
 * @param from  the middle of its end within the one piece
 * @param to    the middle of its end within the other piece
 * @param width in mm
 */
public record Bar(Point from, Point to, double width) {

	/** Steps in which a bar is driven into a piece, of its width. */
	private static final double STEP = 1.0 / 32;
	private static final int STEPS = 64;

	/** @throws IllegalArgumentException unless the width is positive and finite */
	public Bar {
		requireWidth(width);
	}

	static void requireWidth(double width) {
		if (!(width > 0) || !Double.isFinite(width)) {
			throw new IllegalArgumentException("a bar " + width + " mm wide");
		}
	}

	/**
	 * Across a gap. The bar reaches into each piece until both corners of its end are within; into a piece that is too
	 * narrow for that, half as far as the piece goes.
	 */
	static Bar across(Gap gap, Piece one, Piece other, double width, Tolerance tolerance) {
		Point direction = gap.to().minus(gap.from()).unit();
		if (direction.equals(Point.ORIGIN)) {
			direction = other.bounds().centre().minus(one.bounds().centre()).unit();
		}
		Point forward = direction.equals(Point.ORIGIN) ? new Point(1, 0) : direction;
		return new Bar(end(gap.from(), forward.times(-1), one, width, tolerance),
				end(gap.to(), forward, other, width, tolerance), width);
	}

	private static Point end(Point edge, Point into, Piece piece, double width, Tolerance tolerance) {
		PieceLocator within = new PieceLocator(piece, tolerance);
		Point half = into.quarterTurn().times(width / 2);
		double deepest = 0;
		for (int i = 1; i <= STEPS; i++) {
			Point at = edge.plus(into.times(i * STEP * width));
			if (within.holds(at.plus(half)) && within.holds(at.minus(half))) {
				return at;
			}
			if (!within.holds(at)) {
				break;
			}
			deepest = i * STEP * width;
		}
		return edge.plus(into.times(deepest > 0 ? Math.min(width / 2, deepest / 2) : STEP * width));
	}

	/** The bar's four sides. */
	public Outline outline() {
		Point half = to.minus(from).unit().quarterTurn().times(width / 2);
		return Outline.of(Contour.polygon(List.of(from.plus(half), to.plus(half), to.minus(half), from.minus(half))));
	}
}
