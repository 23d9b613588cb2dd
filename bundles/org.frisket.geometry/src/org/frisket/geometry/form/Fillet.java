package org.frisket.geometry.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.lines.Bend;

/**
 * An arc that rounds a corner between two segments: it touches both.
 *
 * @param leaves  parameter on the first where the arc starts
 * @param arrives parameter on the second where it ends
 */
record Fillet(double leaves, double arrives, Point centre, double radius, double sweep) {

	private static final int MOST_STEPS = 24;
	private static final int HALVINGS = 14;
	/** A closer contact is not told from an exact one, in parts of the radius. */
	private static final double EXACT = 1e-10;
	/** More is given up as a spike. */
	private static final double SHARPEST = Math.toRadians(175);

	/**
	 * The one of the radius, or else the largest that fits.
	 *
	 * @param from  the least parameter on the first that the arc may start from
	 * @param to    the greatest on the second that it may end at
	 * @param least radius that is worth it, in mm
	 */
	static Optional<Fillet> between(Segment before, Segment after, double radius, double from, double to,
			double least) {
		double turn = Bend.angle(before, after);
		if (Math.abs(turn) > SHARPEST) {
			return Optional.empty();
		}
		Optional<Fillet> best = touching(before, after, turn, radius, from, to);
		double low = least;
		double high = radius;
		for (int i = 0; i < HALVINGS && best.filter(b -> b.radius == radius).isEmpty() && high > least; i++) {
			double middle = i == 0 ? least : (low + high) / 2;
			Optional<Fillet> found = touching(before, after, turn, middle, from, to);
			if (found.isPresent()) {
				best = found;
				low = middle;
			} else if (i == 0) {
				return Optional.empty();
			} else {
				high = middle;
			}
		}
		return best;
	}

	/** Newton's method for the meeting place of the two sides moved inwards by the radius. */
	private static Optional<Fillet> touching(Segment before, Segment after, double turn, double radius, double from,
			double to) {
		double side = Math.signum(turn);
		double back = radius * Math.tan(Math.abs(turn) / 2);
		double u = Math.max(from, 1 - back / before.length());
		double w = Math.min(to, back / after.length());
		for (int i = 0; i < MOST_STEPS; i++) {
			Point one = moved(before, u, side * radius);
			Point other = moved(after, w, side * radius);
			Point miss = other.minus(one);
			if (miss.length() <= EXACT * radius) {
				double sweep = Bend.angle(tangent(before, u), tangent(after, w));
				boolean within = slowing(before, u, side * radius) > 0 && slowing(after, w, side * radius) > 0;
				return sweep * side > 0 && within
						? Optional.of(new Fillet(u, w, one.towards(other, 0.5), radius, sweep))
						: Optional.empty();
			}
			Point along = speed(before, u, side * radius);
			Point away = speed(after, w, side * radius);
			double determinant = along.cross(away);
			if (determinant == 0 || !Double.isFinite(determinant)) {
				return Optional.empty();
			}
			double nextU = u + miss.cross(away) / determinant;
			double nextW = w + miss.cross(along) / determinant;
			u = within(nextU, from, 1);
			w = within(nextW, 0, to);
		}
		return Optional.empty();
	}

	/** A step beyond the end goes to the end, from where it leads back unless there is no contact. */
	private static double within(double parameter, double from, double to) {
		return Math.max(from, Math.min(to, parameter));
	}

	private static Point tangent(Segment segment, double t) {
		return t <= 0 ? segment.startTangent() : t >= 1 ? segment.endTangent() : segment.derivative(t).unit();
	}

	private static Point moved(Segment segment, double t, double inwards) {
		return segment.at(t).plus(tangent(segment, t).quarterTurn().times(inwards));
	}

	/** Of the moved place by the parameter: a curve moved to its inner side is slower by its curvature. */
	private static Point speed(Segment segment, double t, double inwards) {
		return segment.derivative(t).times(slowing(segment, t, inwards));
	}

	/** Not above 0 where a side bends in more sharply than the arc would: that cannot touch it from within. */
	private static double slowing(Segment segment, double t, double inwards) {
		Point first = segment.derivative(t);
		double length = first.length();
		double curvature = segment instanceof Cubic cubic && length > 0
				? first.cross(cubic.secondDerivative(t)) / (length * length * length)
				: 0;
		return 1 - inwards * curvature;
	}

	/** From the first segment to the second, between exactly these ends. */
	List<Segment> arc(Point start, Point end, double deviation) {
		OutlineBuilder pen = new OutlineBuilder(deviation);
		Point spoke = start.minus(centre);
		pen.startArc(centre, radius, radius, 0, Math.atan2(spoke.y(), spoke.x()), sweep);
		List<Segment> arc = new ArrayList<>(pen.build().contours().get(0).segments());
		arc.set(0, arc.get(0).withEnds(start, arc.get(0).end()));
		int last = arc.size() - 1;
		arc.set(last, arc.get(last).withEnds(arc.get(last).start(), end));
		return arc;
	}
}
