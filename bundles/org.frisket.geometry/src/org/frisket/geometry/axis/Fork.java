package org.frisket.geometry.axis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;

/**
 * Where strokes meet. About a fork an axis bends aside from where a hand would go; the ends there are therefore cut
 * back, and led on in their own directions: two that go on in each other's direction are one stroke of the hand, the
 * others run up to it.
 */
final class Fork {

	/** Strokes that bend less than this are drawn in one go. */
	private static final double STRAIGHT_ON = Math.toRadians(50);
	private static final int STEPS = 24;

	/** An end that was cut back: where it is, and the direction towards the fork. */
	record End(int stroke, boolean atTo, Point place, Point direction) {
	}

	/** Two ends and the way between them, both included. */
	record Link(End one, End other, List<Point> way) {
	}

	/** An end and where it runs up to another. */
	record Landing(End end, Point place) {
	}

	private final List<Link> links = new ArrayList<>();
	private final List<Landing> landings = new ArrayList<>();

	Fork(Point centre, double radius, List<End> ends) {
		List<End> open = new ArrayList<>(ends);
		for (Optional<Link> link = straightest(open); link.isPresent(); link = straightest(open)) {
			links.add(link.get());
			open.removeAll(List.of(link.get().one(), link.get().other()));
		}
		if (links.isEmpty() && open.size() > 1) {
			turn(meeting(open, centre, radius), open);
		}
		for (End end : open) {
			landings.add(new Landing(end, landing(end)));
		}
	}

	List<Link> links() {
		return links;
	}

	List<Landing> landings() {
		return landings;
	}

	/** No two go straight on: the two that bend least turn where all of them meet. */
	private void turn(Point meeting, List<End> open) {
		End one = open.get(0);
		End other = open.get(1);
		for (int i = 0; i < open.size(); i++) {
			for (int j = i + 1; j < open.size(); j++) {
				if (bend(open.get(i), open.get(j)) < bend(one, other)) {
					one = open.get(i);
					other = open.get(j);
				}
			}
		}
		links.add(new Link(one, other, List.of(one.place(), meeting, other.place())));
		open.removeAll(List.of(one, other));
	}

	private static Optional<Link> straightest(List<End> open) {
		Link best = null;
		double least = STRAIGHT_ON;
		for (int i = 0; i < open.size(); i++) {
			for (int j = i + 1; j < open.size(); j++) {
				double bend = bend(open.get(i), open.get(j));
				if (bend < least) {
					least = bend;
					best = new Link(open.get(i), open.get(j), smooth(open.get(i), open.get(j)));
				}
			}
		}
		return Optional.ofNullable(best);
	}

	/** By how much the way from one end to the other turns in all, in radians. */
	private static double bend(End one, End other) {
		Point across = other.place().minus(one.place()).unit();
		return angle(one.direction(), across) + angle(across, other.direction().times(-1));
	}

	private static double angle(Point a, Point b) {
		return Math.abs(Math.atan2(a.cross(b), a.dot(b)));
	}

	private static List<Point> smooth(End one, End other) {
		double reach = one.place().distance(other.place()) / 3;
		Cubic curve = new Cubic(one.place(), one.place().plus(one.direction().times(reach)),
				other.place().plus(other.direction().times(reach)), other.place());
		List<Point> way = new ArrayList<>();
		for (int i = 0; i <= STEPS; i++) {
			way.add(curve.at((double) i / STEPS));
		}
		return way;
	}

	/** The place nearest to the lines on which the ends lie (least squares), not farther off than the fork reaches. */
	private static Point meeting(List<End> ends, Point centre, double radius) {
		double xx = 0;
		double xy = 0;
		double yy = 0;
		double x = 0;
		double y = 0;
		for (End end : ends) {
			Point normal = end.direction().quarterTurn();
			double distance = normal.dot(end.place());
			xx += normal.x() * normal.x();
			xy += normal.x() * normal.y();
			yy += normal.y() * normal.y();
			x += normal.x() * distance;
			y += normal.y() * distance;
		}
		double determinant = xx * yy - xy * xy;
		if (Math.abs(determinant) < 1e-6) {
			return centre;
		}
		Point meeting = new Point((x * yy - y * xy) / determinant, (y * xx - x * xy) / determinant);
		double off = meeting.distance(centre);
		return off <= radius ? meeting : centre.towards(meeting, radius / off);
	}

	/** Where an end led on in its own direction meets what is drawn here; else the nearest place of that. */
	private Point landing(End end) {
		Point best = end.place();
		double least = Double.POSITIVE_INFINITY;
		for (Link link : links) {
			for (int i = 1; i < link.way().size(); i++) {
				Point a = link.way().get(i - 1);
				Point b = link.way().get(i);
				Point side = b.minus(a);
				double along = end.direction().cross(side);
				double t = along == 0 ? -1 : end.direction().cross(end.place().minus(a)) / along;
				double ahead = along == 0 ? -1 : a.minus(end.place()).cross(side) / along;
				boolean met = t >= 0 && t <= 1 && ahead >= 0;
				Point place = a.towards(b, met ? t : nearest(end.place(), a, b));
				// to be met straight ahead counts for more than to be near
				double distance = met ? ahead / 2 : end.place().distance(place);
				if (distance < least) {
					least = distance;
					best = place;
				}
			}
		}
		return best;
	}

	private static double nearest(Point point, Point a, Point b) {
		Point side = b.minus(a);
		double length = side.dot(side);
		return length == 0 ? 0 : Math.max(0, Math.min(1, point.minus(a).dot(side) / length));
	}
}
