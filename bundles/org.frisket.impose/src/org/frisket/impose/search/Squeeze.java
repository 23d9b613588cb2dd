package org.frisket.impose.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Shortens a strip step by step, as long as its parts can be moved clear of each other in it. What cannot be cleared is
 * shaken and tried again; at the end the steps become small.
 */
final class Squeeze {

	private static final int PATIENCE = 150;
	private static final int STRIKES = 3;
	private static final double FIRST_STEP = 0.003;
	private static final int LAST_PATIENCE = 100;
	private static final int LAST_STRIKES = 5;
	/** The last steps: of the length, from the one to the other. */
	private static final double LONG_STEP = 5e-4;
	private static final double SHORT_STEP = 1e-5;
	/** Of those that failed: how far down from the best one is chosen to begin from. */
	private static final double SPREAD = 0.25;
	private static final int TRIES = 20;

	/** One that could not be cleared, and by how much. */
	private record Near(Arrangement at, double loss) {
	}

	private final SplittableRandom random;
	private final Arrangement best;
	private final Arrangement at;
	private final Separation separation;
	private final List<Near> failed = new ArrayList<>();
	/** The larger half of the parts. */
	private final int[] large;
	/** No strip can be shorter. */
	private final double least;

	/** @param start none of its parts overlap */
	Squeeze(Arrangement start, SplittableRandom random) {
		this.random = random;
		best = start.copy();
		best.length = start.extent();
		at = best.copy();
		separation = new Separation(at, random);
		int movable = start.parts() - start.fixed;
		large = IntStream.range(start.fixed, start.parts()).boxed()
				.sorted(Comparator.comparingDouble(p -> -start.shapes.reach[start.shape[p]]))
				.limit(Math.max(Math.min(2, movable), movable / 2)).mapToInt(Integer::intValue).toArray();
		least = least(start);
		begin();
	}

	/** The shortest so far; none of its parts overlap. */
	Arrangement best() {
		return best;
	}

	/** Goes on from a better one that somebody else found. */
	void adopt(Arrangement better) {
		best.set(better);
		failed.clear();
		begin();
	}

	private void begin() {
		at.set(best);
		at.shorten(Math.max(least, best.length * (1 - FIRST_STEP)));
	}

	/** That of the longest part as it lies shortest, or of what is fixed. */
	private static double least(Arrangement start) {
		double least = 0;
		for (int p = 0; p < start.parts(); p++) {
			int shape = start.shape[p];
			double own = p < start.fixed ? start.x[p] + start.solid(p).maxX()
					: IntStream.of(start.shapes.allowed[shape]).mapToObj(turn -> start.shapes.solid(shape, turn))
							.mapToDouble(solid -> solid.maxX() - solid.minX()).min().orElseThrow();
			least = Math.max(least, own);
		}
		return least;
	}

	/** Whether it cannot get shorter. */
	boolean isDone() {
		return best.length <= least * (1 + 1e-9);
	}

	/** Looks for quite other arrangements. */
	void explore(Effort effort) {
		while (!effort.isOver() && !isDone()) {
			if (separation.run(PATIENCE, STRIKES, effort)) {
				take();
				failed.clear();
				begin();
			} else {
				failed.add(new Near(at.copy(), separation.loss()));
				failed.sort(Comparator.comparingDouble(Near::loss));
				int from = (int) (Math.abs(gaussian()) * SPREAD * failed.size());
				at.set(failed.get(Math.min(failed.size() - 1, from)).at());
				shake();
			}
		}
	}

	/** Gets the last out of the best. @param done how far all of this is, from 0 to 1 */
	void press(Effort effort, double done) {
		while (!effort.isOver() && !isDone()) {
			double step = LONG_STEP * Math.pow(SHORT_STEP / LONG_STEP, done);
			at.set(best);
			cut(Math.max(least, best.length * (1 - step)), random.nextDouble() * best.length);
			if (separation.run(LAST_PATIENCE, LAST_STRIKES, effort)) {
				take();
			}
		}
	}

	private void take() {
		double extent = at.extent();
		if (extent < best.length) {
			best.set(at);
			best.length = extent;
		}
	}

	/** Takes a piece out of the strip at a place: all behind it moves up. */
	private void cut(double length, double place) {
		double by = at.length - length;
		for (int p = at.fixed; p < at.parts(); p++) {
			if (at.x[p] > place) {
				at.x[p] -= by;
			}
		}
		at.shorten(length);
	}

	/** Two large parts of different shape change places; if all are alike, one goes elsewhere. */
	private void shake() {
		for (int tries = 0; tries < TRIES && large.length > 1; tries++) {
			int p = large[random.nextInt(large.length)];
			int q = large[random.nextInt(large.length)];
			if (at.shape[p] != at.shape[q]) {
				double x = at.x[p];
				double y = at.y[p];
				at.x[p] = at.x[q];
				at.y[p] = at.y[q];
				at.x[q] = x;
				at.y[q] = y;
				at.hold(p);
				at.hold(q);
				return;
			}
		}
		if (large.length > 0) {
			int p = large[random.nextInt(large.length)];
			at.x[p] = random.nextDouble() * at.length;
			at.y[p] = random.nextDouble() * at.width;
			at.hold(p);
		}
	}

	private double gaussian() {
		return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
	}
}
