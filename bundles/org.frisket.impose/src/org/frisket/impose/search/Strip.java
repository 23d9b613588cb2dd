package org.frisket.impose.search;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** The shortest strip for its parts that a budget gives. */
final class Strip {

	/** Of the budget: the rest goes into the last small steps. */
	private static final double EXPLORING = 0.75;

	private final Epochs epochs;
	private final List<Squeeze> searchers;

	/** @param start none of its parts overlap */
	Strip(Arrangement start, SplittableRandom random, Epochs epochs) {
		this.epochs = epochs;
		searchers = IntStream.range(0, Epochs.SEARCHERS).mapToObj(i -> new Squeeze(start, random.split())).toList();
	}

	/** @param better told of each shorter one, on this thread */
	Arrangement run(Effort effort, Consumer<Arrangement> better) {
		Effort exploring = effort.share(EXPLORING);
		while (!exploring.isOver() && !best().isDone()) {
			epoch(exploring, better, false);
		}
		effort.used(exploring);
		Effort pressing = effort.share(1);
		while (!pressing.isOver() && !best().isDone()) {
			epoch(pressing, better, true);
		}
		effort.used(pressing);
		return best().best();
	}

	private void epoch(Effort effort, Consumer<Arrangement> better, boolean last) {
		double before = best().best().length;
		double done = effort.done();
		List<Effort> slices = searchers.stream().map(s -> effort.slice(Epochs.STEPS)).toList();
		epochs.meet(IntStream.range(0, searchers.size()).<Callable<Void>>mapToObj(i -> () -> {
			if (last) {
				searchers.get(i).press(slices.get(i), done);
			} else {
				searchers.get(i).explore(slices.get(i));
			}
			return null;
		}).toList());
		effort.used(slices.get(0));
		Squeeze best = best();
		for (Squeeze searcher : searchers) {
			if (searcher.best().length > best.best().length) {
				searcher.adopt(best.best());
			}
		}
		if (best.best().length < before) {
			better.accept(best.best());
		}
	}

	private Squeeze best() {
		Squeeze best = searchers.get(0);
		for (Squeeze searcher : searchers) {
			best = searcher.best().length < best.best().length ? searcher : best;
		}
		return best;
	}
}
