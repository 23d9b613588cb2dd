package org.frisket.geometry.internal.outset;

import java.util.List;

/** A smooth stretch of an offset: the places at one distance from a stretch of a foot. It turns by less than half. */
final class Rim {

	/** How far in mm chords may stand off. They only find what lies near to what. */
	private static final double SAG = 0.03;
	private static final int MOST_CHORDS = 400;

	/** What an estimate from the middle may be off by. */
	private static final double SAFETY = 1.5;

	private static final int LOOKS_FOR_COUNT = 5;

	/** So often is a foot asked whether the rim runs backwards. */
	private static final int LOOKS = 12;
	private static final double BISECTED = 1e-12;
	private static final double SHORTEST = 1e-9;

	final Foot foot;
	final double from;
	final double to;
	final double distance;
	private Chords chords;

	Rim(Foot foot, double from, double to, double distance) {
		this.foot = foot;
		this.from = from;
		this.to = to;
		this.distance = distance;
	}

	/** Corners of a polyline, their parameters, and about how far each chord stands off at most; a box around it all. */
	record Chords(double[] x, double[] y, double[] t, double[] sag, double minX, double minY, double maxX, double maxY) {
	}

	void at(double t, double[] place) {
		foot.at(t, distance, place);
	}

	Rim between(double first, double last) {
		return first == from && last == to ? this : new Rim(foot, first, last, distance);
	}

	/** Several threads may make them at once: they make the same. */
	Chords chords() {
		Chords known = chords;
		if (known == null) {
			known = flattened();
			chords = known;
		}
		return known;
	}

	private Chords flattened() {
		int count = count();
		double[] x = new double[count + 1];
		double[] y = new double[count + 1];
		double[] t = new double[count + 1];
		double[] sag = new double[count];
		double[] place = new double[4];
		double minX = Double.POSITIVE_INFINITY;
		double minY = Double.POSITIVE_INFINITY;
		double maxX = Double.NEGATIVE_INFINITY;
		double maxY = Double.NEGATIVE_INFINITY;
		double most = 0;
		for (int i = 0; i <= count; i++) {
			t[i] = i == count ? to : from + (to - from) * i / count;
			at(t[i], place);
			x[i] = place[0];
			y[i] = place[1];
			minX = Math.min(minX, x[i]);
			minY = Math.min(minY, y[i]);
			maxX = Math.max(maxX, x[i]);
			maxY = Math.max(maxY, y[i]);
			if (i > 0 && !(foot instanceof LineFoot)) {
				at((t[i - 1] + t[i]) / 2, place);
				sag[i - 1] = SAFETY * sag(x[i - 1], y[i - 1], x[i], y[i], place[0], place[1]);
				most = Math.max(most, sag[i - 1]);
			}
		}
		return new Chords(x, y, t, sag, minX - most, minY - most, maxX + most, maxY + most);
	}

	/** How far the middle of a curve stands off the line through its ends. */
	static double sag(double x0, double y0, double x1, double y1, double x, double y) {
		double dx = x1 - x0;
		double dy = y1 - y0;
		double length = Math.sqrt(dx * dx + dy * dy);
		return length == 0 ? 0 : Math.abs(dx * (y - y0) - dy * (x - x0)) / length;
	}

	private int count() {
		if (foot instanceof LineFoot) {
			return 1;
		}
		double[] place = new double[4];
		double[] x = new double[LOOKS_FOR_COUNT];
		double[] y = new double[LOOKS_FOR_COUNT];
		double bend = 0;
		for (int i = 0; i < LOOKS_FOR_COUNT; i++) {
			at(from + (to - from) * i / (LOOKS_FOR_COUNT - 1), place);
			x[i] = place[0];
			y[i] = place[1];
			if (i > 1) {
				double xx = x[i - 2] - 2 * x[i - 1] + x[i];
				double yy = y[i - 2] - 2 * y[i - 1] + y[i];
				bend = Math.max(bend, xx * xx + yy * yy);
			}
		}
		// a quarter's second difference is |g''| / 16, a chord of n within |g''| / (8 n^2)
		return (int) Math.min(MOST_CHORDS, Math.max(1, Math.ceil(Math.sqrt(2 * Math.sqrt(bend) / SAG))));
	}

	/** Adds the stretches of the rim at another distance that do not run backwards. */
	void addForward(double otherDistance, List<Rim> rims) {
		if (foot.isEven()) {
			rims.add(new Rim(foot, from, to, otherDistance));
			return;
		}
		double start = from;
		double before = foot.stretching(from, otherDistance);
		for (int i = 1; i <= LOOKS; i++) {
			double t = i == LOOKS ? to : from + (to - from) * i / LOOKS;
			double stretching = foot.stretching(t, otherDistance);
			if (before > 0 != stretching > 0) {
				double change = change(from + (to - from) * (i - 1) / LOOKS, t, before > 0, otherDistance);
				if (before > 0) {
					add(start, change, otherDistance, rims);
				}
				start = change;
			}
			before = stretching;
		}
		if (before > 0) {
			add(start, to, otherDistance, rims);
		}
	}

	private void add(double start, double end, double otherDistance, List<Rim> rims) {
		if (end - start > SHORTEST) {
			rims.add(new Rim(foot, start, end, otherDistance));
		}
	}

	/** Ends on the side that runs forward. */
	private double change(double low, double high, boolean forwardAtLow, double otherDistance) {
		double first = low;
		double last = high;
		while (last - first > BISECTED) {
			double middle = (first + last) / 2;
			if (foot.stretching(middle, otherDistance) > 0 == forwardAtLow) {
				first = middle;
			} else {
				last = middle;
			}
		}
		return forwardAtLow ? first : last;
	}
}
