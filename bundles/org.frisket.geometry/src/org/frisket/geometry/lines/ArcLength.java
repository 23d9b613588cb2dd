package org.frisket.geometry.lines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** A contour by the length along it. Positions are exact to about a millionth of a segment's length. */
public final class ArcLength {

	/** A place on a curve and the direction of travel there, of length 1. */
	public record Place(Point point, Point direction) {
	}

	/** Chords that a segment's length is first looked up in; refined by Newton's method. */
	private static final int PARTS = 16;
	private static final int STEPS = 8;
	/** Each by a third: to some 1e-7 of a part. */
	private static final int NARROWINGS = 40;

	private final List<Segment> segments;
	private final boolean closed;
	private final double[] starts;

	/** @throws IllegalArgumentException if the contour has no length */
	public ArcLength(Contour contour) {
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

	/** In mm. */
	public double length() {
		return starts[segments.size()];
	}

	public boolean isClosed() {
		return closed;
	}

	/** Beyond the ends of an open contour on its straight continuation; a closed one is gone round again. */
	public Place at(double along) {
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
		int number = segmentAt(wanted);
		return at(segments.get(number), wanted - starts[number]);
	}

	/** The length along the curve, from 0 to all of it, to the place that is nearest to a point; the first of equals. */
	public double nearest(Point point) {
		double best = 0;
		double least = Double.POSITIVE_INFINITY;
		for (int i = 0; i < segments.size(); i++) {
			Segment segment = segments.get(i);
			for (int part = 0; part < PARTS; part++) {
				double t = nearest(segment, (double) part / PARTS, (double) (part + 1) / PARTS, point);
				double distance = segment.at(t).distance(point);
				if (distance < least) {
					least = distance;
					best = starts[i] + (t <= 0 ? 0 : segment.between(0, t).length());
				}
			}
		}
		return Math.min(best, length());
	}

	/** By thirds: a part of a segment bends so little that its distance has one least value. */
	private static double nearest(Segment segment, double from, double to, Point point) {
		double low = from;
		double high = to;
		for (int i = 0; i < NARROWINGS; i++) {
			double third = (high - low) / 3;
			if (segment.at(low + third).distance(point) <= segment.at(high - third).distance(point)) {
				high -= third;
			} else {
				low += third;
			}
		}
		// the ends are met exactly
		double middle = (low + high) / 2;
		return low <= from ? from : high >= to ? to : middle;
	}

	/** Where each segment starts, in mm along the contour, and at last where it ends. */
	public double[] joints() {
		return starts.clone();
	}

	/** The segments that have a length, in their order. */
	public List<Segment> segments() {
		return segments;
	}

	/**
	 * The stretch between two places, as an open contour. On a closed one it may run on over the start, by less than once
	 * round.
	 *
	 * @throws IllegalArgumentException unless {@code from < to}, both on the contour
	 */
	public Contour stretch(double from, double to) {
		if (!(from >= 0 && from < to && to - from <= length()) || !closed && to > length()) {
			throw new IllegalArgumentException("a stretch from " + from + " to " + to + " of " + length());
		}
		List<Segment> cut = new ArrayList<>();
		addStretch(Math.min(from, length()), Math.min(to, length()), cut);
		if (to > length()) {
			addStretch(Math.max(0, from - length()), to - length(), cut);
		}
		for (int i = 1; i < cut.size(); i++) {
			// joints are the same place for both, but not always to the last bit
			cut.set(i, cut.get(i).withEnds(cut.get(i - 1).end(), cut.get(i).end()));
		}
		return Contour.open(cut);
	}

	private void addStretch(double from, double to, List<Segment> cut) {
		for (int i = segmentAt(from); i < segments.size() && starts[i] < to; i++) {
			Segment segment = segments.get(i);
			double low = from <= starts[i] ? 0 : parameter(segment, from - starts[i]);
			double high = to >= starts[i + 1] ? 1 : parameter(segment, to - starts[i]);
			if (low < high) {
				cut.add(segment.between(low, high));
			}
		}
	}

	private int segmentAt(double along) {
		int found = Arrays.binarySearch(starts, along);
		return Math.min(segments.size() - 1, found >= 0 ? found : -found - 2);
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
