package org.frisket.impose.search;

import org.frisket.impose.fit.NoFit;
import org.frisket.impose.fit.NoFits;
import org.frisket.impose.fit.Turns;
import org.frisket.impose.shape.Dents;
import org.frisket.impose.shape.Solid;

/** The different shapes of a task, each with the turns it may take, in steps of the full circle. */
final class Shapes {

	final int count;
	final int steps;
	final double[] cos;
	final double[] sin;
	/** Of each shape the turns that are allowed. */
	final int[][] allowed;
	/** Of each shape the way of its farthest corner from the origin. */
	final double[] reach;
	final double[] area;
	/** The root of a shape's size: makes depths of small and large parts count alike. */
	final double[] weight;
	private final Solid[][] solids;
	private final NoFits noFits;
	private final double slack;

	/**
	 * @param solids  unturned, about their origins
	 * @param allowed of each the turns it may take
	 * @param steps   into how many the full circle is parted
	 * @param slack   by how much more than touching parts keep apart
	 */
	Shapes(Solid[] solids, int[][] allowed, int steps, double slack) {
		count = solids.length;
		this.steps = steps;
		this.allowed = allowed;
		cos = new double[steps];
		sin = new double[steps];
		for (int t = 0; t < steps; t++) {
			cos[t] = Turns.cos(t, steps);
			sin[t] = Turns.sin(t, steps);
		}
		this.solids = new Solid[count][steps];
		reach = new double[count];
		area = new double[count];
		weight = new double[count];
		for (int s = 0; s < count; s++) {
			reach[s] = solids[s].reach();
			area[s] = solids[s].area();
			weight[s] = Math.pow(area[s], 0.25);
			for (int t : allowed[s]) {
				this.solids[s][t] = solids[s].turned(cos[t], sin[t]);
			}
		}
		this.slack = slack;
		noFits = new NoFits(solids, steps, slack);
	}

	/** Whether there are so many that not all are tried with all. */
	boolean isCrowd() {
		return Dents.isCrowd(count);
	}

	/** By how much more than touching parts keep apart. */
	double slack() {
		return slack;
	}

	/** Lets go of the fields; those that are asked for again are made again. */
	void forget() {
		noFits.forget();
	}

	/** How many fields of two shapes had to be made so far. */
	long made() {
		return noFits.made();
	}

	/** A shape in a turn that is allowed. */
	Solid solid(int shape, int turn) {
		return solids[shape][turn];
	}

	/** Of two shapes so turned, as the first lies unturned; the first is the one of the lower number. */
	NoFit noFit(int first, int firstTurn, int second, int secondTurn) {
		int turn = secondTurn - firstTurn;
		return noFits.of(first, second, turn < 0 ? turn + steps : turn);
	}

	/** How deep two shapes so turned are in each other. @param dx and {@code dy} from the first one's origin to the other's */
	double depth(int a, int aTurn, int b, int bTurn, double dx, double dy) {
		double r = reach[a] + reach[b];
		if (dx * dx + dy * dy >= r * r) {
			return 0;
		}
		if (a > b) {
			return depth(b, bTurn, a, aTurn, -dx, -dy);
		}
		if (boxesApart(solids[a][aTurn], solids[b][bTurn], dx, dy)) {
			return 0;
		}
		return noFit(a, aTurn, b, bTurn).depth(cos[aTurn] * dx + sin[aTurn] * dy, cos[aTurn] * dy - sin[aTurn] * dx);
	}

	/** Then nobody needs the field of the two. */
	private boolean boxesApart(Solid a, Solid b, double dx, double dy) {
		return dx + b.minX() >= a.maxX() + slack || dx + b.maxX() <= a.minX() - slack || dy + b.minY() >= a.maxY() + slack
				|| dy + b.maxY() <= a.minY() - slack;
	}
}
