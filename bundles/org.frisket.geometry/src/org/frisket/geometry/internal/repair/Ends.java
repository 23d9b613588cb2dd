package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** Moving the ends of lines. A segment moves nowhere by more than its ends do. */
final class Ends {

	private Ends() {
	}

	/** The segments from a new start to a new end; those that have lost their extent are left out. */
	static List<Segment> moved(Contour line, Point start, Point end) {
		List<Segment> segments = new ArrayList<>(line.segments());
		Segment first = segments.get(0);
		segments.set(0, first.withEnds(start, first.end()));
		int last = segments.size() - 1;
		segments.set(last, segments.get(last).withEnds(segments.get(last).start(), end));
		segments.removeIf(Ends::isPoint);
		return segments;
	}

	private static boolean isPoint(Segment segment) {
		return segment.start().equals(segment.end()) && (!(segment instanceof Cubic cubic)
				|| cubic.control1().equals(cubic.start()) && cubic.control2().equals(cubic.start()));
	}
}
