package org.frisket.print.register;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;

/**
 * Takes cuts from the design to where the print is. Lines stay lines. An affine map takes curves exactly. A projective one
 * makes rational curves of them, which are parted until cubics with their ends and tangents keep within the tolerance: smooth
 * joints stay smooth.
 */
public final class CutMapping {

	private static final int MOST_PARTINGS = 24;
	/** The largest value of t²(1-t)² between 0 and 1. */
	private static final double LARGEST_BLEND = 1.0 / 16;

	private final Projection map;
	/** Null for a projective map. */
	private final Transform affine;
	private final double tolerance;

	/** @param tolerance between mapped curves and the cubics that stand for them; affine maps need none */
	public CutMapping(Projection map, Tolerance tolerance) {
		this.map = map;
		affine = map.isAffine() ? map.toTransform() : null;
		this.tolerance = tolerance.mm();
	}

	/** Every contour runs the way it is drawn, also if the map mirrors. */
	public Outline map(Outline outline) throws RegisterException {
		List<Contour> mapped = new ArrayList<>();
		for (Contour contour : outline.contours()) {
			mapped.add(map(contour));
		}
		return new Outline(mapped);
	}

	/**
	 * Wound as a region must be, also if the map mirrors. Contours that come nearer to each other than twice the tolerance may
	 * touch afterwards.
	 */
	public Region map(Region region) throws RegisterException {
		if (affine != null) {
			return region.transformed(affine);
		}
		List<Piece> pieces = new ArrayList<>();
		for (Piece piece : region.pieces()) {
			List<Contour> holes = new ArrayList<>();
			for (Contour hole : piece.holes()) {
				holes.add(wound(hole));
			}
			pieces.add(new Piece(wound(piece.outer()), holes));
		}
		return new Region(pieces);
	}

	private Contour wound(Contour contour) throws RegisterException {
		Contour mapped = map(contour);
		return map.determinant() * map.weight(contour.start()) < 0 ? mapped.reversed() : mapped;
	}

	/**
	 * One contour in its own direction; closed if it is closed.
	 *
	 * @throws RegisterException if it reaches to where the map goes to infinity
	 */
	public Contour map(Contour contour) throws RegisterException {
		if (affine != null) {
			return contour.transformed(affine);
		}
		List<Segment> mapped = new ArrayList<>();
		for (Segment segment : contour.segments()) {
			if (segment instanceof Cubic cubic) {
				part(cubic, MOST_PARTINGS, mapped);
			} else {
				weights(segment.start(), segment.end());
				mapped.add(new Line(map.apply(segment.start()), map.apply(segment.end())));
			}
		}
		return contour.isClosed() ? Contour.closed(mapped) : Contour.open(mapped);
	}

	private void part(Cubic curve, int partings, List<Segment> mapped) throws RegisterException {
		weights(curve.start(), curve.end());
		Cubic fitted = new Cubic(map.apply(curve.start()), handle(curve.start(), curve.control1()),
				handle(curve.end(), curve.control2()), map.apply(curve.end()));
		if (partings == 0 || error(curve, fitted) <= tolerance) {
			mapped.add(fitted);
			return;
		}
		Cubic first = curve.between(0, 0.5);
		part(first, partings - 1, mapped);
		Cubic second = curve.between(0.5, 1);
		part(new Cubic(first.end(), second.control1(), second.control2(), second.end()), partings - 1, mapped);
	}

	/** The derivative of the rational curve at an end is that of the map there, applied to the handle. */
	private Point handle(Point end, Point control) {
		return map.apply(end).plus(map.linear(end).apply(control.minus(end)));
	}

	/**
	 * A bound of the distance at equal parameters. The rational curve less the cubic, times the weight, is a polynomial of
	 * degree 6 with double zeros at both ends, so t²(1-t)² times one of degree 2, which three places settle.
	 */
	private double error(Cubic curve, Cubic fitted) {
		double least = Math.min(Math.min(map.weight(curve.start()), map.weight(curve.end())),
				Math.min(map.weight(curve.control1()), map.weight(curve.control2())));
		double most = Math.max(Math.max(map.weight(curve.start()), map.weight(curve.end())),
				Math.max(map.weight(curve.control1()), map.weight(curve.control2())));
		if (least <= 0 && most >= 0) {
			return Double.POSITIVE_INFINITY;
		}
		Point early = quotient(curve, fitted, 0.25);
		Point middle = quotient(curve, fitted, 0.5);
		Point late = quotient(curve, fitted, 0.75);
		Point first = early.minus(middle).times(3).plus(late);
		Point last = late.minus(middle).times(3).plus(early);
		Point between = middle.times(2).minus(first.plus(last).times(0.5));
		double largest = Math.max(first.length(), Math.max(between.length(), last.length()));
		return LARGEST_BLEND * largest / Math.min(Math.abs(least), Math.abs(most));
	}

	private Point quotient(Cubic curve, Cubic fitted, double t) {
		Point on = curve.at(t);
		double blend = t * t * (1 - t) * (1 - t);
		return map.apply(on).minus(fitted.at(t)).times(map.weight(on) / blend);
	}

	private void weights(Point start, Point end) throws RegisterException {
		double one = map.weight(start);
		double other = map.weight(end);
		if (!(one * other > 0)) {
			throw new RegisterException(Messages.CutMapping_horizon);
		}
	}
}
