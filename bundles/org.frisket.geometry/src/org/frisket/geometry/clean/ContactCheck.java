package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;

/**
 * Proves that closed contours neither cross nor touch, themselves or each other. Curves whose boxes or chords are
 * further apart than their sagitta are clear of each other; all others are halved until they are, or until the rest is
 * straight for all purposes.
 */
final class ContactCheck {

	private static final int HALVINGS_PER_SPAN = 400;
	private static final int SHARP_CORNER = 3;
	private static final int FINER_AT_CORNERS = 256;

	/** Between stretches of which one at least is curved, so that polylines near enough to them keep apart too. */
	private final double clearance;
	private final double lineClearance;
	private final double straight;
	private final RobustLineIntersector intersector = new RobustLineIntersector();
	private final List<Placed> spans = new ArrayList<>();
	private long budget;

	/** A span and its place: which one it is of how many in which contour. */
	private record Placed(Span span, int contour, int index, int count) {

		boolean follows(Placed other) {
			return contour == other.contour && index == (other.index + 1) % count;
		}

		/** Few spans on, where the contour may still be on its way out of a sharp corner. */
		boolean near(Placed other) {
			int between = Math.abs(index - other.index);
			return contour == other.contour && Math.min(between, count - between) <= SHARP_CORNER;
		}
	}

	/** Part of a span between two of its points. */
	private record Chord(Span span, double from, double to, Point start, Point end) {

		double sagitta() {
			return span.bend * (to - from) * (to - from) / 8;
		}

		Chord[] halves() {
			double middle = (from + to) / 2;
			Point point = span.segment.at(middle);
			return new Chord[] { new Chord(span, from, middle, start, point),
					new Chord(span, middle, to, point, end) };
		}
	}

	/** Contours, and stretches of one that are not neighbours, touch if they come nearer than parts of the tolerance. */
	ContactCheck(List<Contour> contours, double tolerance) {
		this.clearance = tolerance / 32;
		this.lineClearance = tolerance / 1e5;
		this.straight = tolerance / 4096;
		int number = 0;
		for (Contour contour : contours) {
			List<Span> cut = new ArrayList<>();
			for (Segment segment : contour.segments()) {
				Span.cut(segment, cut);
			}
			for (int i = 0; i < cut.size(); i++) {
				spans.add(new Placed(cut.get(i), number, i, cut.size()));
			}
			number++;
		}
		budget = 10_000 + (long) HALVINGS_PER_SPAN * spans.size();
	}

	/** A place of contact, or null if there is none. */
	Point find(Monitor monitor) {
		List<Point> contacts = find(1, monitor);
		return contacts.isEmpty() ? null : contacts.get(0);
	}

	/**
	 * Places of contact that have nothing to do with each other: no span that is in contact at one of them lies near one
	 * that is in contact at another.
	 *
	 * @param most after so many it looks for no more
	 */
	List<Point> find(int most, Monitor monitor) {
		spans.sort(Comparator.comparingDouble(p -> p.span().minX));
		List<Point> contacts = new ArrayList<>();
		List<Span> taken = new ArrayList<>();
		new BoxSweep(spans.stream().map(Placed::span).toList(), clearance).run(monitor, (later, earlier) -> {
			Span one = spans.get(later).span();
			Span other = spans.get(earlier).span();
			if (taken.stream().noneMatch(t -> t.isNear(one) || t.isNear(other))
					&& meet(spans.get(later), spans.get(earlier))) {
				contacts.add(one.start);
				taken.add(one);
				taken.add(other);
			}
			return contacts.size() >= most;
		});
		return contacts;
	}

	private boolean meet(Placed a, Placed b) {
		Chord first = whole(a.span());
		Chord second = whole(b.span());
		boolean forward = b.follows(a);
		boolean backward = a.follows(b);
		if (!forward && !backward) {
			boolean lines = a.span().bend == 0 && b.span().bend == 0;
			return meet(first, second, lines || a.near(b) ? lineClearance : clearance);
		}
		if (forward != backward && sideOnly(a.span(), b.span())) {
			return false;
		}
		return meet(first, second, 0);
	}

	private static Chord whole(Span span) {
		return new Chord(span, span.from, span.to, span.start, span.end);
	}

	/** Boxes that share no more than a side, where each span has but its end. */
	private static boolean sideOnly(Span a, Span b) {
		return Math.max(a.minX, b.minX) == Math.min(a.maxX, b.maxX) && (a.minX != a.maxX || b.minX != b.maxX)
				|| Math.max(a.minY, b.minY) == Math.min(a.maxY, b.maxY) && (a.minY != a.maxY || b.minY != b.maxY);
	}

	private boolean meet(Chord a, Chord b, double gap) {
		if (apart(a.start.x(), a.end.x(), b.start.x(), b.end.x(), gap)
				|| apart(a.start.y(), a.end.y(), b.start.y(), b.end.y(), gap)) {
			return false;
		}
		double sagittaA = a.sagitta();
		double sagittaB = b.sagitta();
		Coordinate a0 = coordinate(a.start);
		Coordinate a1 = coordinate(a.end);
		Coordinate b0 = coordinate(b.start);
		Coordinate b1 = coordinate(b.end);
		double distance = Distance.segmentToSegment(a0, a1, b0, b1);
		if (distance > sagittaA + sagittaB + gap) {
			return false;
		}
		double enough = gap > 0 ? straight : straight / FINER_AT_CORNERS;
		if (sagittaA <= enough && sagittaB <= enough) {
			return gap > 0 || touch(a0, a1, b0, b1);
		}
		if (--budget < 0) {
			return true;
		}
		if (sagittaA >= sagittaB) {
			for (Chord half : a.halves()) {
				if (meet(half, b, gap)) {
					return true;
				}
			}
		} else {
			for (Chord half : b.halves()) {
				if (meet(a, half, gap)) {
					return true;
				}
			}
		}
		return false;
	}

	/** Neighbours may share the node between them and nothing else. */
	private boolean touch(Coordinate a0, Coordinate a1, Coordinate b0, Coordinate b1) {
		intersector.computeIntersection(a0, a1, b0, b1);
		return intersector.isProper() || intersector.getIntersectionNum() > 1
				|| intersector.hasIntersection() && !a1.equals2D(b0) && !a0.equals2D(b1);
	}

	private static boolean apart(double a0, double a1, double b0, double b1, double gap) {
		return Math.max(a0, a1) + gap < Math.min(b0, b1) || Math.max(b0, b1) + gap < Math.min(a0, a1);
	}

	private static Coordinate coordinate(Point point) {
		return new Coordinate(point.x(), point.y());
	}
}
