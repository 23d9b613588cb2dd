package org.frisket.geometry.stencil;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;

/**
 * Where a ray from inside an island crosses the opening round it.
 *
 * @param bridge    the way across
 * @param thickness of the opening there, measured in whichever direction it is least
 * @param before    how far the island reaches back from the bridge
 * @param after     how far the sheet reaches on behind it
 */
record Crossing(Bridge bridge, double thickness, double before, double after) {

	private static final int DIRECTIONS = 12;
	/** Steps in which a strip is driven into the sheet, of its width, and how far at most. */
	private static final double STEP = 1.0 / 16;
	private static final int STEPS = 48;

	/** The way out along a ray; null if it meets nothing that can be bridged. */
	static Crossing along(Opening opening, Island island, double angle, double width) {
		Point along = new Point(Math.cos(angle), Math.sin(angle));
		List<Double> met = opening.crossings(island.middle(), along);
		double start = island.exit(along);
		int i = Collections.binarySearch(met, start - 1e-9);
		i = i < 0 ? -i - 1 : i;
		if (i + 1 >= met.size()) {
			return null;
		}
		double from = met.get(i);
		double to = met.get(i + 1);
		double back = i == 0 ? from : from - Math.max(0, met.get(i - 1));
		double on = i + 2 < met.size() ? met.get(i + 2) - to : Double.POSITIVE_INFINITY;
		Bridge bridge = new Bridge(island.middle().plus(along.times(from)), island.middle().plus(along.times(to)), width);
		return new Crossing(bridge, thickness(opening, bridge), back, on);
	}

	private static double thickness(Opening opening, Bridge bridge) {
		Point middle = bridge.inner().towards(bridge.outer(), 0.5);
		double least = bridge.length();
		for (int i = 0; i < DIRECTIONS; i++) {
			double angle = Math.PI * i / DIRECTIONS;
			Point along = new Point(Math.cos(angle), Math.sin(angle));
			least = Math.min(least, first(opening, middle, along) + first(opening, middle, along.times(-1)));
		}
		return least;
	}

	private static double first(Opening opening, Point from, Point along) {
		List<Double> met = new ArrayList<>(opening.crossings(from, along));
		return met.isEmpty() ? Double.POSITIVE_INFINITY : met.get(0);
	}

	/** How well it serves: thick places first, and crossed straight rather than at a slant. */
	double merit() {
		return thickness * thickness / bridge.length();
	}

	/**
	 * What is kept of the sheet. It goes on into the sheet at both ends until it is met by it in its whole width, so
	 * that its neck is nowhere narrower; where the sheet is too narrow for that, half as far as that reaches.
	 */
	Contour strip(Opening opening) {
		Point along = bridge.outer().minus(bridge.inner()).unit();
		return bridge.strip(depth(opening, bridge.inner(), along.times(-1), before),
				depth(opening, bridge.outer(), along, after));
	}

	private double depth(Opening opening, Point edge, Point into, double room) {
		double width = bridge.width();
		Point half = into.quarterTurn().times(width / 2);
		for (int i = 1; i <= STEPS && i * STEP * width < room; i++) {
			Point at = edge.plus(into.times(i * STEP * width));
			if (!opening.holds(at.plus(half)) && !opening.holds(at.minus(half))) {
				// a little more, lest the corner just touches
				return Math.min((i + 1) * STEP * width, room);
			}
		}
		return Math.min(width, room / 2);
	}
}
