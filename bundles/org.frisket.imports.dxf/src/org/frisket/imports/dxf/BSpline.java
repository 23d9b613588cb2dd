package org.frisket.imports.dxf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;

/**
 * A B-spline, rational or not, taken apart into Bézier pieces by inserting each inner knot until it is there as often
 * as the degree (Boehm's algorithm; Piegl and Tiller, The NURBS Book, chapter 5; from memory). Pieces of a degree up to
 * three without weights are cubics exactly; others are followed by cubics to within a deviation.
 */
final class BSpline {

	private static final int MOST_HALVINGS = 12;
	private static final double[] CHECKED = { 0.25, 0.5, 0.75 };

	/** A control point in homogeneous coordinates. */
	private record Pole(double x, double y, double w) {

		Pole towards(Pole other, double t) {
			return new Pole(x + (other.x - x) * t, y + (other.y - y) * t, w + (other.w - w) * t);
		}

		Point point() {
			return new Point(x / w, y / w);
		}
	}

	private final int degree;
	private final List<Double> knots;
	private final List<Pole> poles = new ArrayList<>();
	private final boolean rational;

	/**
	 * @param weights one for each pole, or none
	 * @throws IllegalArgumentException if the counts do not fit together, knots fall, or a weight is not positive
	 */
	BSpline(int degree, List<Double> knots, List<Point> points, List<Double> weights) {
		if (degree < 1 || degree > 25 || points.size() <= degree || knots.size() != points.size() + degree + 1
				|| !weights.isEmpty() && weights.size() != points.size() || !rising(knots)) {
			throw new IllegalArgumentException();
		}
		this.degree = degree;
		this.knots = new ArrayList<>(knots);
		for (int i = 0; i < points.size(); i++) {
			double w = weights.isEmpty() ? 1 : weights.get(i);
			if (!(w > 0)) {
				throw new IllegalArgumentException();
			}
			poles.add(new Pole(points.get(i).x() * w, points.get(i).y() * w, w));
		}
		rational = weights.stream().distinct().count() > 1;
	}

	private static boolean rising(List<Double> knots) {
		for (int i = 1; i < knots.size(); i++) {
			if (knots.get(i) < knots.get(i - 1)) {
				return false;
			}
		}
		return knots.get(0) < knots.get(knots.size() - 1);
	}

	/** A new contour. */
	void addTo(OutlineBuilder builder, double deviation) {
		boolean first = true;
		for (Pole[] piece : pieces()) {
			if (first) {
				builder.moveTo(piece[0].point());
				first = false;
			}
			if (!rational && degree <= 3) {
				exactly(builder, piece);
			} else {
				follow(builder, piece, 0, 1, deviation, 0);
			}
		}
	}

	private List<Pole[]> pieces() {
		double from = knots.get(degree);
		double to = knots.get(knots.size() - degree - 1);
		saturate(from);
		saturate(to);
		for (double knot : knots.stream().distinct().toList()) {
			if (knot > from && knot < to) {
				saturate(knot);
			}
		}
		List<Pole[]> pieces = new ArrayList<>();
		for (int i = degree; i + 1 < knots.size() - degree; i++) {
			if (knots.get(i) < knots.get(i + 1) && knots.get(i) >= from && knots.get(i + 1) <= to) {
				pieces.add(poles.subList(i - degree, i + 1).toArray(new Pole[0]));
			}
		}
		return pieces;
	}

	/** Inserts the knot until it is there as often as the degree. */
	private void saturate(double knot) {
		int there = (int) knots.stream().filter(k -> k == knot).count();
		for (int i = there; i < degree; i++) {
			insert(knot);
		}
	}

	private void insert(double knot) {
		int span = degree;
		while (span + 1 < knots.size() - 1 && knots.get(span + 1) <= knot) {
			span++;
		}
		List<Pole> changed = new ArrayList<>();
		for (int i = span - degree + 1; i <= span && i < poles.size(); i++) {
			double width = knots.get(i + degree) - knots.get(i);
			changed.add(poles.get(i - 1).towards(poles.get(i), width == 0 ? 0 : (knot - knots.get(i)) / width));
		}
		List<Pole> kept = new ArrayList<>(poles.subList(0, span - degree + 1));
		kept.addAll(changed);
		kept.addAll(poles.subList(Math.min(span, poles.size()), poles.size()));
		poles.clear();
		poles.addAll(kept);
		knots.add(span + 1, knot);
	}

	private void exactly(OutlineBuilder builder, Pole[] piece) {
		Point[] p = Arrays.stream(piece).map(Pole::point).toArray(Point[]::new);
		switch (degree) {
		case 1 -> builder.lineTo(p[1]);
		case 2 -> builder.quadraticTo(p[1], p[2]);
		default -> builder.cubicTo(p[1], p[2], p[3]);
		}
	}

	/** The stretch by one cubic with its ends and tangents; by two halves if that strays. */
	private void follow(OutlineBuilder builder, Pole[] piece, double from, double to, double deviation, int halvings) {
		Point start = at(piece, from);
		Point end = at(piece, to);
		double third = (to - from) / 3;
		Cubic cubic = new Cubic(start, start.plus(derivative(piece, from).times(third)),
				end.minus(derivative(piece, to).times(third)), end);
		boolean near = true;
		for (double t : CHECKED) {
			near &= cubic.at(t).distance(at(piece, from + (to - from) * t)) <= deviation;
		}
		if (near || halvings == MOST_HALVINGS) {
			builder.cubicTo(cubic.control1(), cubic.control2(), end);
			return;
		}
		double middle = (from + to) / 2;
		follow(builder, piece, from, middle, deviation, halvings + 1);
		follow(builder, piece, middle, to, deviation, halvings + 1);
	}

	private static Point at(Pole[] piece, double t) {
		return lastTwo(piece, t, 1)[0].point();
	}

	/** By the quotient rule from the last two points of de Casteljau's scheme. */
	private static Point derivative(Pole[] piece, double t) {
		Pole[] two = lastTwo(piece, t, 2);
		Pole pole = two[0].towards(two[1], t);
		int degree = piece.length - 1;
		double dx = degree * (two[1].x() - two[0].x());
		double dy = degree * (two[1].y() - two[0].y());
		double dw = degree * (two[1].w() - two[0].w());
		Point point = pole.point();
		return new Point((dx - point.x() * dw) / pole.w(), (dy - point.y() * dw) / pole.w());
	}

	private static Pole[] lastTwo(Pole[] piece, double t, int count) {
		Pole[] row = piece.clone();
		for (int left = row.length; left > count; left--) {
			for (int i = 0; i + 1 < left; i++) {
				row[i] = row[i].towards(row[i + 1], t);
			}
		}
		return row;
	}
}
