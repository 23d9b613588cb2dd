package org.frisket.impose.search;

import org.frisket.geometry.Monitor;
import org.frisket.impose.Budget;

/** What is left of a budget, for one searcher. A share of it is an effort too. */
final class Effort {

	private final Monitor monitor;
	private final long begin;
	private final long end;
	private final long firstStep;
	private final long lastStep;
	private long steps;

	private Effort(Monitor monitor, long begin, long end, long firstStep, long lastStep) {
		this.monitor = monitor;
		this.begin = begin;
		this.end = end;
		this.firstStep = firstStep;
		this.lastStep = lastStep;
		steps = firstStep;
	}

	static Effort of(Budget budget, Monitor monitor) {
		long now = System.nanoTime();
		long end = Double.isInfinite(budget.seconds()) ? Long.MAX_VALUE : now + (long) (budget.seconds() * 1e9);
		return new Effort(monitor, now, end, 0, budget.steps());
	}

	/** From now on for a share of what is left. */
	Effort share(double fraction) {
		long now = System.nanoTime();
		return new Effort(monitor, now, end == Long.MAX_VALUE ? end : now + (long) ((end - now) * fraction), steps,
				lastStep == Long.MAX_VALUE ? lastStep : steps + (long) ((lastStep - steps) * fraction));
	}

	/** For so many steps of one searcher at most. */
	Effort slice(long most) {
		return new Effort(monitor, begin, end, steps, Math.min(lastStep, steps + most));
	}

	/** After a share of it was used. */
	void used(Effort share) {
		steps = share.steps;
	}

	void step(long count) {
		steps += count;
	}

	long steps() {
		return steps;
	}

	/** From 0 to 1. */
	double done() {
		double byClock = end == Long.MAX_VALUE ? 0 : (System.nanoTime() - begin) / (double) Math.max(1, end - begin);
		double bySteps = lastStep == Long.MAX_VALUE ? 0
				: (steps - firstStep) / (double) Math.max(1, lastStep - firstStep);
		return Math.min(1, Math.max(byClock, bySteps));
	}

	boolean isOver() {
		return steps >= lastStep || end != Long.MAX_VALUE && System.nanoTime() >= end || monitor.isCancelled();
	}
}
