package org.frisket.impose.search;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;

import org.frisket.geometry.Monitor;
import org.frisket.impose.Budget;
import org.frisket.impose.Ground;
import org.frisket.impose.Layout;
import org.frisket.impose.Placement;

/** From an imposition to a search, and from what it finds to layouts. */
public final class Searches {

	/** Of the budget: for saving sheets; the rest goes into the last one. */
	private static final double SAVING = 0.8;

	private final Problem problem;
	private final Consumer<Layout> better;
	private final Effort effort;
	private final SplittableRandom random;
	private Layout best;

	private Searches(Problem problem, Budget budget, Consumer<Layout> better, Monitor monitor) {
		this.problem = problem;
		this.better = better;
		effort = Effort.of(budget, monitor);
		random = new SplittableRandom(budget.seed());
	}

	/** @param better told of each better layout, on the calling thread; the first comes at once */
	public static Layout run(Problem problem, Budget budget, Consumer<Layout> better, Monitor monitor) {
		try {
			return new Searches(problem, budget, better, monitor).run();
		} finally {
			problem.shapes.forget();
		}
	}

	private Layout run() {
		try (Epochs epochs = new Epochs()) {
			Ground first = problem.imposition().grounds().get(0);
			if (first.isRoll()) {
				new Roll(problem, first, effort, random, this::offer).lay(epochs);
			} else {
				sheets(epochs);
			}
		}
		return best;
	}

	private void offer(Layout layout) {
		if (best == null || layout.isBetterThan(best)) {
			best = layout;
			better.accept(layout);
		}
	}

	private void sheets(Epochs epochs) {
		Sheets rows = new Sheets(problem.shapes, problem);
		rows.fillRows(problem.order);
		offer(layout(rows));
		Sheets sheets = new Sheets(problem.shapes, problem);
		sheets.fill(problem.order, effort, more -> offer(layout(more)));
		if (!sheets.left().isEmpty() && rows.left().size() < sheets.left().size()) {
			sheets = rows;
		}
		offer(layout(sheets));
		Sheets search = sheets;
		Effort saving = effort.share(SAVING);
		search.tighten(random.split(), epochs, saving, () -> offer(layout(search)));
		effort.used(saving);
		search.squeezeLast(random.split(), epochs, effort, () -> offer(layout(search)));
		offer(layout(search));
	}

	private Layout layout(Sheets sheets) {
		List<Ground> used = new ArrayList<>();
		List<Placement> placements = new ArrayList<>();
		double length = 0;
		for (Sheets.Sheet sheet : sheets.sheets()) {
			problem.add(sheet.at(), used.size(), 0, placements);
			used.add(problem.ground(sheet.number()));
			length = sheet.at().extent() + 2 * problem.rim;
		}
		return new Layout(used, placements, problem.left(sheets.left()), length);
	}
}
