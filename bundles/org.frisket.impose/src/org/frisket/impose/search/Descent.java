package org.frisket.impose.search;

import java.util.SplittableRandom;

/** From a place to a near one where a part loses less. */
final class Descent {

	private static final int PUSHES = 12;
	/** A little further than just clear. */
	private static final double OUT = 1 + 1e-9;
	private static final double PARALLEL = 1e-9;
	private static final double LONGER = 1.1;
	private static final double SHORTER = 0.6;
	/** Of the first step. */
	private static final double LAST_STEP = 1e-3;
	private static final int DIRECTIONS = 4;

	private final Others others;
	private final SplittableRandom random;
	private final Ways ways = new Ways();
	private double x;
	private double y;
	private double loss;
	private double fromX;
	private double fromY;

	Descent(Others others, SplittableRandom random) {
		this.others = others;
		this.random = random;
	}

	/** Where it ended. */
	double x() {
		return x;
	}

	double y() {
		return y;
	}

	/** @return what the part loses at the end */
	double from(double startX, double startY, double startLoss) {
		x = startX;
		y = startY;
		loss = startLoss;
		double step = 0;
		for (int push = 0; push < PUSHES && loss > 0; push++) {
			others.ways(x, y, ways);
			if (ways.none()) {
				return 0;
			}
			step = ways.firstDepth;
			if (!push()) {
				break;
			}
		}
		if (loss > 0) {
			creep(step);
		}
		return loss;
	}

	/** Out of what costs most, or of both that do, or as all push together. */
	private boolean push() {
		double before = loss;
		fromX = x;
		fromY = y;
		attempt(ways.firstX * OUT, ways.firstY * OUT);
		if (ways.several()) {
			if (Math.abs(ways.det()) > PARALLEL * ways.firstDepth * ways.secondDepth) {
				attempt(ways.bothX() * OUT, ways.bothY() * OUT);
			}
			attempt(ways.meanX(), ways.meanY());
			attempt(ways.secondX * OUT, ways.secondY * OUT);
		}
		return loss < before;
	}

	private boolean attempt(double dx, double dy) {
		double toX = others.heldX(fromX + dx);
		double toY = others.heldY(fromY + dy);
		double there = others.loss(toX, toY, loss);
		if (there >= loss) {
			return false;
		}
		x = toX;
		y = toY;
		loss = there;
		return true;
	}

	/** Smaller and smaller steps along, across and askew. */
	private void creep(double first) {
		double step = first;
		while (step > first * LAST_STEP && loss > 0) {
			int direction = random.nextInt(DIRECTIONS);
			double dx = direction == 1 ? 0 : step;
			double dy = direction == 0 ? 0 : direction == DIRECTIONS - 1 ? -step : step;
			fromX = x;
			fromY = y;
			boolean better = attempt(dx, dy) | attempt(-dx, -dy);
			step *= better ? LONGER : SHORTER;
		}
	}
}
