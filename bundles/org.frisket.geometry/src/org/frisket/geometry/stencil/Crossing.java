package org.frisket.geometry.stencil;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

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
}
