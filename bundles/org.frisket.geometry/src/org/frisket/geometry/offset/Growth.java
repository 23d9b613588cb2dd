package org.frisket.geometry.offset;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.locationtech.jts.geom.Geometry;

/**
 * Round outward offsets of one region as polygons, the farther ones from the nearer: all within b of all within a of a
 * shape is all within a + b of it. Most of the work of a far offset is in places that a near one has filled already, so
 * to go in steps is several times faster, and offsets at several distances share them.
 * <p>
 * The steps lie at fixed distances, so that an offset is the same whatever others were asked for. Safe for several
 * threads.
 */
final class Growth {

	/** The first step in mm; each further one goes twice as far. */
	private static final double FIRST_STEP = 2;

	private final Region region;
	private final double sampling;
	private final Memory memory;
	private final List<Geometry> steps = new ArrayList<>();
	private Geometry start;

	/** @param sampling how far in mm flattening may go from the curves, and all arcs together from the truth */
	Growth(Region region, double sampling, Memory memory) {
		this.region = region;
		this.sampling = sampling;
		this.memory = memory;
	}

	/** The region itself. */
	synchronized Geometry start() {
		if (start == null) {
			start = Polygons.of(region, sampling);
		}
		return start;
	}

	/** Everything within a distance above 0. */
	Geometry by(double distance) {
		int passed = 0;
		while (reach(passed) < distance) {
			passed++;
		}
		return passed == 0 ? PolygonOffset.round(start(), distance, sampling)
				: PolygonOffset.round(step(passed - 1), distance - reach(passed - 1), sampling / 2);
	}

	private static double reach(int step) {
		return Math.scalb(FIRST_STEP, step);
	}

	/** All steps together may spend half of what arcs may, the first half of that, and so on. */
	private synchronized Geometry step(int index) {
		for (int i = steps.size(); i <= index; i++) {
			double deviation = Math.scalb(sampling, -2 - i);
			steps.add(i == 0 ? firstStep(deviation)
					: PolygonOffset.round(steps.get(i - 1), reach(i) - reach(i - 1), deviation));
		}
		return steps.get(index);
	}

	/** By far the dearest step: parts that it cannot bring together go alone, and each is kept for when it comes again. */
	private Geometry firstStep(double deviation) {
		record Key(List<Piece> part, double sampling) {
		}
		List<Geometry> grown = new ArrayList<>();
		for (List<Piece> part : Parts.apart(region.pieces(), 2 * reach(0))) {
			grown.add(memory.get(new Key(part, sampling),
					() -> PolygonOffset.round(Polygons.of(new Region(part), sampling), reach(0), deviation)));
		}
		return grown.size() == 1 ? grown.get(0) : Polygons.together(grown);
	}
}
