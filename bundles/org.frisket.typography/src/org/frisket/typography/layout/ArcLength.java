package org.frisket.typography.layout;

import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** A contour by the length along it. Positions are exact to about a millionth of a segment's length. */
final class ArcLength {

	/** A place on a curve and the direction of travel there, of length 1. */
	record Place(Point point, Point direction) {
	}

	/** Chords that a segment's length is first looked up in; refined by Newton's method. */
	private static final int PARTS = 16;
	private static final int STEPS = 8;

	private final List<Segment> segments;
	private final boolean closed;
	private final double[] starts;

	/** @throws IllegalArgumentException if the contour has no length */
	ArcLength(Contour contour) {
		segments = contour.segments().stream().filter(s -> s.length() > 0).toList();
		closed = contour.isClosed();
		starts = new double[segments.size() + 1];
		for (int i = 0; i < segments.size(); i++) {
			starts[i + 1] = starts[i] + segments.get(i).length();
		}
		if (!(length() > 0)) {
			throw new IllegalArgumentException("a path without length");
		}
	}

	double length() {
		return starts[segments.size()];
	}

	boolean isClosed() {
		return closed;
	}

	/** Beyond the ends of an open contour on its straight continuation; a closed one is gone round again. */
	Place at(double along) {
		double wanted = closed ? along - length() * Math.floor(along / length()) : along;
		if (wanted <= 0 && !closed) {
			Segment first = segments.get(0);
			return new Place(first.start().plus(first.startTangent().times(wanted)), first.startTangent());
		}
		if (wanted >= length()) {
			Segment last = segments.get(segments.size() - 1);
			return new Place(last.end().plus(last.endTangent().times(closed ? 0 : wanted - length())),
					last.endTangent());
		}
		int found = Arrays.binarySearch(starts, wanted);
		int number = Math.min(segments.size() - 1, found >= 0 ? found : -found - 2);
		return at(segments.get(number), wanted - starts[number]);
	}

	private static Place at(Segment segment, double wanted) {
		double t = parameter(segment, wanted);
		Point direction = t <= 0 ? segment.startTangent()
				: t >= 1 ? segment.endTangent() : segment.derivative(t).unit();
		return new Place(segment.at(t), direction.equals(Point.ORIGIN) ? segment.endTangent() : direction);
	}

	private static double parameter(Segment segment, double wanted) {
		double from = 0;
		double before = 0;
		for (int i = 1; i <= PARTS; i++) {
			double to = (double) i / PARTS;
			double length = segment.between(from, to).length();
			if (before + length >= wanted || i == PARTS) {
				return refined(segment, from, to, wanted - before);
			}
			before += length;
			from = to;
		}
		return 1;
	}

	private static double refined(Segment segment, double from, double to, double wanted) {
		double low = from;
		double high = to;
		double t = (from + to) / 2;
		for (int i = 0; i < STEPS; i++) {
			double error = t <= from ? -wanted : segment.between(from, t).length() - wanted;
			if (error > 0) {
				high = t;
			} else {
				low = t;
			}
			double speed = segment.derivative(t).length();
			double next = t - error / speed;
			t = next >= low && next <= high ? next : (low + high) / 2;
		}
		return t;
	}
}
