package org.frisket.geometry.offset;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Polygons;
import org.locationtech.jts.geom.Geometry;

/**
 * Round outward offsets of one piece as polygons, the farther ones from the nearer: all within b of all within a of a
 * shape is all within a + b of it. Most of the work of a far offset is in places that a near one has filled already, so
 * to go in steps is several times faster, and offsets at several distances share them.
 * <p>
 * The steps lie at fixed distances, so that an offset is the same whatever others were asked for. Safe for several
 * threads.
 */
final class PieceGrowth {

	/** The first step in mm; each further one goes twice as far. */
	private static final double FIRST_STEP = 2;

	private final Piece piece;
	private final double sampling;
	private final Memory memory;
	private final List<Geometry> steps = new ArrayList<>();

	/** @param sampling how far in mm flattening may go from the curves, and all arcs together from the truth */
	PieceGrowth(Piece piece, double sampling, Memory memory) {
		this.piece = piece;
		this.sampling = sampling;
		this.memory = memory;
	}

	/** Everything within a distance above 0. */
	Geometry by(double distance, Monitor monitor) {
		int passed = 0;
		while (reach(passed) < distance) {
			passed++;
		}
		return passed == 0 ? PolygonOffset.round(Polygons.of(piece, sampling), distance, sampling)
				: PolygonOffset.round(step(passed - 1, monitor), distance - reach(passed - 1), sampling / 2);
	}

	private static double reach(int step) {
		return Math.scalb(FIRST_STEP, step);
	}

	private synchronized Geometry step(int index, Monitor monitor) {
		record Key(Piece piece, int step, double sampling) {
		}
		for (int i = steps.size(); i <= index; i++) {
			monitor.check();
			int next = i;
			steps.add(memory.get(new Key(piece, i, sampling), () -> made(next)));
		}
		return steps.get(index);
	}

	/** All steps together may spend half of what arcs may, the first half of that, and so on. */
	private Geometry made(int step) {
		double deviation = Math.scalb(sampling, -2 - step);
		return step == 0 ? PolygonOffset.round(Polygons.of(piece, sampling), reach(0), deviation)
				: PolygonOffset.round(steps.get(step - 1), reach(step) - reach(step - 1), deviation);
	}
}
