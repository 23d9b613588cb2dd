package org.frisket.geometry.internal.outset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;

/**
 * Offsets of one piece, the farther ones from the nearer. The steps lie at fixed distances, so that an offset is the same
 * whatever others were asked for. Safe for several threads.
 */
final class PieceRims {

	/** The first step in mm; each further one goes twice as far. */
	private static final double FIRST_STEP = 2;

	private final Piece piece;
	private final Memory memory;
	private final List<Optional<Rims>> steps = new ArrayList<>();
	private Optional<Ground> ground;

	PieceRims(Piece piece, Memory memory) {
		this.piece = piece;
		this.memory = memory;
	}

	/** Everything within a distance above 0; nothing if that cannot be told. */
	Optional<Rims> by(double distance, Monitor monitor) {
		int passed = 0;
		while (reach(passed) <= distance) {
			passed++;
		}
		if (passed > 0 && reach(passed - 1) == distance) {
			return step(passed - 1, monitor);
		}
		return passed == 0 ? started(distance, monitor) : moved(step(passed - 1, monitor), distance, monitor);
	}

	private static double reach(int step) {
		return Math.scalb(FIRST_STEP, step);
	}

	private synchronized Optional<Rims> step(int index, Monitor monitor) {
		record Key(Piece piece, int step) {
		}
		for (int i = steps.size(); i <= index; i++) {
			monitor.check();
			int next = i;
			steps.add(memory.get(new Key(piece, i), () -> next == 0 ? started(reach(0), monitor)
					: moved(steps.get(next - 1), reach(next), monitor)));
		}
		return steps.get(index);
	}

	private Optional<Rims> started(double distance, Monitor monitor) {
		Optional<Ground> known = ground();
		if (known.isEmpty()) {
			return Optional.empty();
		}
		try {
			return Optional.of(Rims.of(known.get(), distance, monitor));
		} catch (Unclear unclear) {
			return Optional.empty();
		}
	}

	private synchronized Optional<Ground> ground() {
		if (ground == null) {
			try {
				ground = Optional.of(new Ground(piece, false));
			} catch (Unclear unclear) {
				ground = Optional.empty();
			}
		}
		return ground;
	}

	private static Optional<Rims> moved(Optional<Rims> rims, double distance, Monitor monitor) {
		if (rims.isEmpty()) {
			return rims;
		}
		try {
			return Optional.of(rims.get().moved(distance, monitor));
		} catch (Unclear unclear) {
			return Optional.empty();
		}
	}
}
