package org.frisket.impose.search;

import java.util.SplittableRandom;

/** Moves parts of an arrangement until none overlap, or until it gives up. */
final class Separation {

	/** An overlap less by so much is worth going on for. */
	private static final double PROGRESS = 0.98;

	private final Arrangement at;
	private final Clashes clashes;
	private final Relocation relocation;
	private final SplittableRandom random;
	private final int[] order;

	Separation(Arrangement at, SplittableRandom random) {
		this.at = at;
		this.random = random;
		clashes = new Clashes(at);
		relocation = new Relocation(at, clashes, random);
		order = new int[at.parts()];
	}

	/** Of the arrangement as it was left. */
	double loss() {
		return clashes.total();
	}

	/**
	 * @param patience rounds without progress before the best so far is gone back to
	 * @param strikes  how often that may happen in a row
	 * @return whether no parts overlap now; otherwise the arrangement is the one that overlaps least
	 */
	boolean run(int patience, int strikes, Effort effort) {
		clashes.forget();
		clashes.measure();
		// even what is clear at once costs something, or a budget of steps might never end
		effort.step(1);
		double least = clashes.total();
		Arrangement best = at.copy();
		for (int strike = 0; strike < strikes && least > 0; strike++) {
			double before = least;
			for (int idle = 0; idle < patience && !effort.isOver(); idle++) {
				round();
				effort.step(relocation.takeAsked());
				double now = clashes.total();
				if (now == 0) {
					return true;
				}
				if (now < least) {
					idle = now < PROGRESS * least ? -1 : idle;
					least = now;
					best.set(at);
				}
				clashes.reweigh();
			}
			at.set(best);
			clashes.measure();
			if (effort.isOver()) {
				break;
			}
			strike = least < PROGRESS * before ? -1 : strike;
		}
		return least == 0;
	}

	/** Every part that overlaps another gets the chance of a better place, in an order by chance. */
	private void round() {
		int count = 0;
		for (int p = at.fixed; p < at.parts(); p++) {
			if (clashes.clashes(p)) {
				int place = random.nextInt(count + 1);
				order[count++] = order[place];
				order[place] = p;
			}
		}
		for (int i = 0; i < count; i++) {
			if (clashes.clashes(order[i])) {
				relocation.move(order[i]);
			}
		}
	}
}
