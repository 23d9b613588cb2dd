package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.geometry.internal.repair.Trace.Chord;
import org.frisket.geometry.internal.repair.Ways.Way;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.quadtree.Quadtree;

/** Chords that lie there already, and which stretches of a line run along them. */
final class Coverage {

	private static final double ROUNDING = 1e-9;

	private final Quadtree tree = new Quadtree();

	void add(Chord chord) {
		tree.insert(box(chord, 0), chord);
	}

	private static Envelope box(Chord chord, double margin) {
		Envelope box = new Envelope(chord.start().x(), chord.end().x(), chord.start().y(), chord.end().y());
		box.expandBy(margin);
		return box;
	}

	/** The stretches of a line that lie within a radius of chords that count. */
	Ways of(Trace trace, double radius, CountsFor counts) {
		List<Way> ways = new ArrayList<>();
		for (Chord chord : trace.chords()) {
			for (Object found : tree.query(box(chord, radius))) {
				Chord other = (Chord) found;
				if (counts.test(chord, other)) {
					Way way = within(chord, other, radius);
					if (way != null) {
						ways.add(way);
					}
				}
			}
		}
		return Ways.united(ways, ROUNDING);
	}

	/** Whether a chord that lies there may cover another one. */
	@FunctionalInterface
	interface CountsFor {
		boolean test(Chord chord, Chord other);
	}

	/**
	 * The part of one chord within a radius of another; null if there is none. Along a straight way the distance from a
	 * straight line is convex, so it is one stretch: within the strip along the other chord, or in the disc at an end.
	 */
	static Way within(Chord chord, Chord other, double radius) {
		double length = chord.length();
		double along = other.start().distance(other.end());
		if (length == 0) {
			return null;
		}
		double[] range = { Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY };
		disc(chord, other.start(), radius, range);
		disc(chord, other.end(), radius, range);
		if (along > 0) {
			Point axis = other.end().minus(other.start()).unit();
			Point start = chord.start().minus(other.start());
			Point step = chord.end().minus(chord.start()).times(1 / length);
			double[] strip = { 0, length };
			if (clip(strip, start.cross(axis), step.cross(axis), -radius, radius)
					&& clip(strip, start.dot(axis), step.dot(axis), 0, along)) {
				range[0] = Math.min(range[0], strip[0]);
				range[1] = Math.max(range[1], strip[1]);
			}
		}
		return range[0] < range[1] ? new Way(chord.from() + range[0], chord.from() + range[1]) : null;
	}

	private static void disc(Chord chord, Point centre, double radius, double[] range) {
		Point step = chord.end().minus(chord.start()).times(1 / chord.length());
		Point start = chord.start().minus(centre);
		double nearest = -start.dot(step);
		double aside = start.cross(step);
		double half = radius * radius - aside * aside;
		if (half < 0) {
			return;
		}
		double reach = Math.sqrt(half);
		double from = Math.max(0, nearest - reach);
		double to = Math.min(chord.length(), nearest + reach);
		if (from <= to) {
			range[0] = Math.min(range[0], from);
			range[1] = Math.max(range[1], to);
		}
	}

	/** Narrows a range of ways to where {@code value + slope * way} lies between two bounds. */
	private static boolean clip(double[] range, double value, double slope, double least, double most) {
		if (slope == 0) {
			return value >= least && value <= most;
		}
		double one = (least - value) / slope;
		double two = (most - value) / slope;
		range[0] = Math.max(range[0], Math.min(one, two));
		range[1] = Math.min(range[1], Math.max(one, two));
		return range[0] <= range[1];
	}
}
