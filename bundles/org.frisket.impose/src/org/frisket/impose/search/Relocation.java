package org.frisket.impose.search;

import java.util.SplittableRandom;

/** Finds a better place for one part while all others stay: places by chance, and from the best of them downhill. */
final class Relocation {

	/** Places by chance over the whole sheet, shared among the turns, and near the part. */
	private static final int ANYWHERE = 80;
	private static final int LEAST_A_TURN = 16;
	private static final int NEARBY = 20;
	/** Of the part's reach. */
	private static final double NEAR = 0.5;
	private static final int MOST_TURNS = 4;
	/** How many of the places are looked at closer. */
	private static final int KEPT = 3;

	private final Arrangement at;
	private final Clashes clashes;
	private final SplittableRandom random;
	private final Others others;
	private final Descent descent;

	private final double[] keptX = new double[KEPT];
	private final double[] keptY = new double[KEPT];
	private final int[] keptTurn = new int[KEPT];
	private final double[] keptLoss = new double[KEPT];
	private int kept;

	Relocation(Arrangement at, Clashes clashes, SplittableRandom random) {
		this.at = at;
		this.clashes = clashes;
		this.random = random;
		others = new Others(at, clashes);
		descent = new Descent(others, random);
	}

	/** Moves the part to a place where it loses less than now; false if none was found. */
	boolean move(int part) {
		gather(part);
		double least = clashes.weighted(part);
		boolean found = false;
		double x = 0;
		double y = 0;
		int turn = 0;
		int looked = -1;
		for (int k = 0; k < kept && least > 0; k++) {
			if (looked != keptTurn[k]) {
				looked = keptTurn[k];
				others.look(part, looked);
			}
			double loss = descent.from(keptX[k], keptY[k], keptLoss[k]);
			if (loss < least) {
				least = loss;
				x = descent.x();
				y = descent.y();
				turn = looked;
				found = true;
			}
		}
		if (found) {
			at.x[part] = x;
			at.y[part] = y;
			at.turn[part] = turn;
			clashes.measure(part);
		}
		return found;
	}

	private void gather(int part) {
		kept = 0;
		int[] allowed = at.shapes.allowed[at.shape[part]];
		int own = at.turn[part];
		int turns = Math.min(MOST_TURNS, allowed.length);
		for (int k = 0; k < turns; k++) {
			int turn = allowed.length == turns ? allowed[k] : k == 0 ? own : allowed[random.nextInt(allowed.length)];
			if (!others.look(part, turn)) {
				continue;
			}
			if (turn == own) {
				near(part);
			}
			double wide = others.maxX() - others.minX();
			double high = others.maxY() - others.minY();
			for (int i = Math.max(LEAST_A_TURN, ANYWHERE / turns); i > 0; i--) {
				offer(others.minX() + random.nextDouble() * wide, others.minY() + random.nextDouble() * high, turn);
			}
		}
	}

	private void near(int part) {
		offer(at.x[part], at.y[part], at.turn[part]);
		double r = NEAR * at.shapes.reach[at.shape[part]];
		for (int i = 0; i < NEARBY; i++) {
			offer(others.heldX(at.x[part] + (2 * random.nextDouble() - 1) * r),
					others.heldY(at.y[part] + (2 * random.nextDouble() - 1) * r), at.turn[part]);
		}
	}

	private void offer(double x, double y, int turn) {
		double limit = kept < KEPT ? Double.POSITIVE_INFINITY : keptLoss[KEPT - 1];
		double loss = others.loss(x, y, limit);
		if (loss >= limit) {
			return;
		}
		int i = kept < KEPT ? kept++ : KEPT - 1;
		for (; i > 0 && keptLoss[i - 1] > loss; i--) {
			keptX[i] = keptX[i - 1];
			keptY[i] = keptY[i - 1];
			keptTurn[i] = keptTurn[i - 1];
			keptLoss[i] = keptLoss[i - 1];
		}
		keptX[i] = x;
		keptY[i] = y;
		keptTurn[i] = turn;
		keptLoss[i] = loss;
	}

	/** How many questions were asked since the last time. */
	long takeAsked() {
		return others.takeAsked();
	}
}
