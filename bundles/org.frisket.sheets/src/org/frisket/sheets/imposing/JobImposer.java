package org.frisket.sheets.imposing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.ToIntBiFunction;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.impose.Budget;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedJob;
import org.frisket.sheets.JobParts;
import org.frisket.sheets.LaidSheets;
import org.frisket.sheets.SheetPart;

/**
 * Lays the parts of a job and its guests on sheets: what is of one stock and colour together, what is due earlier on the
 * earlier sheets, leftovers of the stock first. What is pinned stays. A plan for all stocks is there at once, and gets
 * better as long as it may.
 */
public final class JobImposer {

	/** At once; a search among more leads nowhere. */
	public static final int MOST_PARTS = 20_000;

	private record Key(String stock, String colour, String job) {
	}

	private JobImposer() {
	}

	/**
	 * A budget of steps gives the same plan wherever it is run. Stocks share the budget: half of it in equal parts, half by
	 * the number of their parts.
	 *
	 * @param host   whose sheets they will be; it is read, not changed, and nobody may change it meanwhile
	 * @param jobs   the host and its guests, by the ids that {@link LaidSheets#of} has
	 * @param better told of each better plan, on the calling thread; the first comes at once
	 * @param monitor when cancelled the best so far is returned; there may be none of it yet, then
	 *                {@link java.util.concurrent.CancellationException} is thrown
	 * @throws IllegalArgumentException with a sentence for people, if parts cannot be laid like that at all
	 */
	public static SheetPlan lay(Job host, Map<String, PreparedJob> jobs, LayingChoices choices, Supply supply,
			Budget budget, Consumer<SheetPlan> better, Tolerance tolerance, Monitor monitor) {
		return lay(host, jobs, (id, part) -> jobs.get(id).job().getQuantity(), choices, supply, budget, better, tolerance,
				monitor);
	}

	/**
	 * The same of as many copies as are wanted.
	 *
	 * @param wanted of a job, by its id, and a part of it; none or more
	 */
	public static SheetPlan lay(Job host, Map<String, PreparedJob> jobs, ToIntBiFunction<String, SheetPart> wanted,
			LayingChoices choices, Supply supply, Budget budget, Consumer<SheetPlan> better, Tolerance tolerance,
			Monitor monitor) {
		List<StockGroup> groups = groups(host, jobs, wanted, choices, supply, tolerance, monitor);
		int count = groups.stream().mapToInt(StockGroup::count).sum();
		if (count > MOST_PARTS) {
			throw new IllegalArgumentException(NLS.bind(Messages.JobImposer_tooMany, count, MOST_PARTS));
		}
		StockGroup.Laid[] laid = new StockGroup.Laid[groups.size()];
		if (groups.size() > 1) {
			// each gets something before any of them is looked at longer
			for (int i = 0; i < laid.length; i++) {
				laid[i] = groups.get(i).lay(Budget.steps(0, budget.seed()), each -> {
					// told with the others
				}, monitor);
			}
			better.accept(plan(laid));
		}
		double seconds = budget.seconds();
		double begun = now();
		for (int i = 0; i < laid.length && (laid[0] == null || !monitor.isCancelled()); i++) {
			int place = i;
			double share = share(groups, i);
			double left = Math.max(0, seconds - (now() - begun));
			Budget own = new Budget(Double.isInfinite(seconds) ? seconds : left * share / rest(groups, i),
					budget.steps() == Long.MAX_VALUE ? Long.MAX_VALUE : (long) (budget.steps() * share), budget.seed());
			StockGroup.Laid found = groups.get(i).lay(own, each -> {
				if (laid[place] == null || isBetter(each, laid[place])) {
					laid[place] = each;
					better.accept(plan(laid));
				}
			}, monitor);
			laid[i] = laid[i] == null || isBetter(found, laid[i]) ? found : laid[i];
		}
		return plan(laid);
	}

	private static double now() {
		return System.nanoTime() / 1e9;
	}

	private static double share(List<StockGroup> groups, int one) {
		double all = Math.max(1, groups.stream().mapToInt(StockGroup::count).sum());
		return 0.5 / groups.size() + 0.5 * groups.get(one).count() / all;
	}

	/** Of this one and those after it. */
	private static double rest(List<StockGroup> groups, int from) {
		double rest = 0;
		for (int i = from; i < groups.size(); i++) {
			rest += share(groups, i);
		}
		return rest;
	}

	private static boolean isBetter(StockGroup.Laid one, StockGroup.Laid other) {
		return Comparator.<StockGroup.Laid>comparingInt(laid -> laid.left().stream().mapToInt(NoRoom::quantity).sum())
				.thenComparingInt(laid -> laid.sheets().size()).thenComparingDouble(JobImposer::used)
				.compare(one, other) < 0;
	}

	/** Of the last sheet, along x. */
	private static double used(StockGroup.Laid laid) {
		if (laid.sheets().isEmpty()) {
			return 0;
		}
		return laid.sheets().get(laid.sheets().size() - 1).parts().stream()
				.mapToDouble(part -> part.x() + halfWidth(part)).max().orElse(0);
	}

	private static double halfWidth(PlannedPart part) {
		return part.part().room().transformed(Transform.rotation(Math.toRadians(part.turn())))
				.bounds().width() / 2;
	}

	private static SheetPlan plan(StockGroup.Laid[] laid) {
		List<PlannedSheet> sheets = new ArrayList<>();
		List<NoRoom> left = new ArrayList<>();
		for (StockGroup.Laid each : laid) {
			sheets.addAll(each.sheets());
			left.addAll(each.left());
		}
		return new SheetPlan(sheets, left);
	}

	private static List<StockGroup> groups(Job host, Map<String, PreparedJob> jobs,
			ToIntBiFunction<String, SheetPart> wanted, LayingChoices choices, Supply supply, Tolerance tolerance,
			Monitor monitor) {
		Pins pins = new Pins(host, LaidSheets.lookUp(jobs, tolerance, monitor));
		List<LocalDate> due = new ArrayList<>(new TreeSet<>(jobs.values().stream().map(job -> job.job().getDue())
				.filter(Objects::nonNull).toList()));
		Map<Key, List<Copies>> byStock = new LinkedHashMap<>();
		jobs.entrySet().stream().sorted(Comparator.comparingInt(each -> rank(due, each.getValue().job())))
				.forEach(each -> {
					PreparedJob job = each.getValue();
					String id = each.getKey().equals(host.getId()) ? null : each.getKey();
					for (SheetPart part : JobParts.of(job, choices.apart(), tolerance, monitor)) {
						Set<Integer> pinned = pins.copies(id, part);
						int quantity = wanted.applyAsInt(each.getKey(), part);
						long there = pinned.stream().filter(copy -> copy <= quantity).count();
						byStock.computeIfAbsent(new Key(part.layer().getStock(), part.layer().getColour(),
								choices.byJob() ? each.getKey() : null), key -> new ArrayList<>())
								.add(new Copies(id, part, (int) Math.max(0, quantity - there),
										rank(due, job.job()), pinned));
					}
				});
		Map<Key, Map<Sheet, List<PlannedPart>>> kept = new LinkedHashMap<>();
		pins.sheets().forEach((sheet, parts) -> {
			String first = parts.get(0).job() == null ? host.getId() : parts.get(0).job();
			Key key = new Key(sheet.getStock(), sheet.getColour(), choices.byJob() ? first : null);
			kept.computeIfAbsent(key, each -> new LinkedHashMap<>()).put(sheet, parts);
			byStock.computeIfAbsent(key, each -> new ArrayList<>());
		});
		List<StockGroup> groups = new ArrayList<>();
		byStock.forEach((key, copies) -> groups.add(new StockGroup(key.stock(), key.colour(), choices,
				supply.of(key.stock(), key.colour()), copies, kept.getOrDefault(key, Map.of()))));
		return groups;
	}

	/** Of jobs that are due earlier it is lower; of those without a day it is the highest. */
	private static int rank(List<LocalDate> due, Job job) {
		return job.getDue() == null ? due.size() : due.indexOf(job.getDue());
	}
}
