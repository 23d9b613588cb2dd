package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** Takes segments shorter than a length out of a closed contour; no place moves by more than that length. */
final class ShortSegments {

	private final double shortest;
	private final double bend;
	private final Consumer<Segment> removed;

	/**
	 * @param bend    how long a stretch is made straight at an end that must move, which keeps it off its neighbours
	 *                best; 0 to bend the whole segment
	 * @param removed told each segment that goes
	 */
	ShortSegments(double shortest, double bend, Consumer<Segment> removed) {
		this.shortest = shortest;
		this.bend = bend;
		this.removed = removed;
	}

	/** Empty if nothing is long enough. */
	List<Segment> removeFrom(List<Segment> contour) {
		List<Segment> before = contour;
		while (true) {
			int found = 0;
			List<Segment> kept = new ArrayList<>(before.size() + 2);
			Point held = null;
			for (Segment segment : before) {
				Segment next = held == null ? segment : segment.withEnds(held, segment.end());
				if (isShort(next, shortest)) {
					removed.accept(segment);
					found++;
					held = next.start();
				} else if (held == null) {
					kept.add(segment);
				} else {
					kept.addAll(startMoved(segment, held));
					held = null;
				}
			}
			if (found == 0) {
				return before;
			}
			if (kept.isEmpty()) {
				return kept;
			}
			if (held != null) {
				// the run of short ones reaches round to the start: let the end come to it
				Segment last = kept.remove(kept.size() - 1);
				kept.addAll(endMoved(last, kept.isEmpty() ? last.start() : kept.get(0).start()));
			}
			before = kept;
		}
	}

	static boolean isShort(Segment segment, double shortest) {
		if (segment.start().distance(segment.end()) >= shortest) {
			return false;
		}
		return segment instanceof Line || polygonLength(segment) < shortest || segment.length() < shortest;
	}

	/** Of the control points in turn, which is no less than the length of the segment. */
	static double polygonLength(Segment segment) {
		return !(segment instanceof Cubic c) ? segment.length() : c.start().distance(c.control1()) + c.control1().distance(c.control2()) + c.control2().distance(c.end());
	}

	private List<Segment> startMoved(Segment segment, Point start) {
		double t = bend / segment.derivative(0).length();
		if (!bends(segment, 0, t)) {
			return List.of(segment.withEnds(start, segment.end()));
		}
		Segment rest = segment.between(t, 1);
		return List.of(new Line(start, rest.start()), rest);
	}

	private List<Segment> endMoved(Segment segment, Point end) {
		double t = 1 - bend / segment.derivative(1).length();
		if (!bends(segment, 1, t)) {
			return List.of(segment.withEnds(segment.start(), end));
		}
		Segment rest = segment.between(0, t);
		return List.of(rest, new Line(rest.end(), end));
	}

	/** Whether the stretch from an end to t can be treated by itself, and leaves enough of the rest. */
	private boolean bends(Segment segment, double end, double t) {
		return bend > 0 && t > 0 && t < 1 && segment.at(t).distance(segment.at(end)) > 2 * shortest
				&& segment.at(t).distance(segment.at(1 - end)) > 2 * shortest;
	}
}
