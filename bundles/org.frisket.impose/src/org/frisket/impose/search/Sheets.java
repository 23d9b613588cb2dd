package org.frisket.impose.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Parts on sheets: filled one after the other, then parts of the last ones are made room for on earlier ones, until a
 * sheet is saved or the budget is used.
 */
final class Sheets {

	/** Rounds without progress before a part is taken not to fit in. */
	private static final int PATIENCE = 60;
	private static final int MOST_PATIENCE = 32 * PATIENCE;
	private static final int STRIKES = 2;
	/** Of a sheet: with more than that in parts nobody tries to put another in. */
	private static final double FULL = 0.97;

	/**
	 * @param number  of the supply
	 * @param demands of its parts, the fixed ones left out
	 */
	record Sheet(int number, Arrangement at, List<Demand> demands) {

		String content() {
			return demands.stream().map(d -> String.valueOf(d.shape())).sorted().collect(Collectors.joining(" "));
		}
	}

	/** Gives a bare sheet with what is fixed on it; null if there are no more. */
	interface Supply {
		Arrangement sheet(int number);

		/** Whether no other kind of sheet comes after this one. */
		boolean isLastKind(int number);
	}

	private final Shapes shapes;
	private final Supply supply;
	private final List<Sheet> sheets = new ArrayList<>();
	private final List<Demand> left = new ArrayList<>();

	Sheets(Shapes shapes, Supply supply) {
		this.shapes = shapes;
		this.supply = supply;
	}

	List<Sheet> sheets() {
		return List.copyOf(sheets);
	}

	/** What found no place. */
	List<Demand> left() {
		return List.copyOf(left);
	}

	/** At once, by the parts' boxes. @param order the first comes on the first sheet */
	void fillRows(List<Demand> order) {
		fill(order, this::rows, rest -> { });
	}

	private Arrangement rows(Arrangement bare, List<Demand> demands, List<Demand> rest) {
		// what is fixed leaves no rows
		return bare.fixed > 0 ? bare : Rows.fill(shapes, bare.length, bare.width, demands, rest);
	}

	/**
	 * Each part as far back as it goes; in rows, once the effort is over.
	 *
	 * @param told of a layout of all, after each sheet: that and those before it as they are, the rest in rows
	 */
	void fill(List<Demand> order, Effort effort, Consumer<Sheets> told) {
		fill(order, (bare, demands, rest) -> {
			if (effort.isOver()) {
				return rows(bare, demands, rest);
			}
			Arrangement at = bare;
			Misfits full = new Misfits(shapes);
			for (Demand demand : rest) {
				if (effort.isOver()) {
					break;
				}
				if (full.contains(demand.shape())) {
					continue;
				}
				Arrangement more = at.with(demand.shape());
				if (new FirstLayout(more).lay(at.parts())) {
					at = more;
					demands.add(demand);
				} else {
					full.add(demand.shape());
				}
			}
			return at;
		}, rest -> {
			if (!rest.isEmpty() && shapes.isCrowd()) {
				told.accept(withRows(rest));
			}
		});
	}

	private Sheets withRows(List<Demand> rest) {
		Sheets all = new Sheets(shapes, new Supply() {

			@Override
			public Arrangement sheet(int number) {
				return supply.sheet(number + sheets.size());
			}

			@Override
			public boolean isLastKind(int number) {
				return supply.isLastKind(number + sheets.size());
			}
		});
		all.fillRows(rest);
		all.sheets.replaceAll(sheet -> new Sheet(sheet.number() + sheets.size(), sheet.at(), sheet.demands()));
		all.sheets.addAll(0, sheets);
		return all;
	}

	private interface Filling {
		/** Takes of the rest what comes on the sheet, and adds it to the demands. */
		Arrangement fill(Arrangement bare, List<Demand> demands, List<Demand> rest);
	}

	private void fill(List<Demand> order, Filling filling, Consumer<List<Demand>> filled) {
		sheets.clear();
		left.clear();
		List<Demand> rest = new ArrayList<>(order);
		int empty = 0;
		for (int number = 0; !rest.isEmpty(); number++) {
			Arrangement bare = supply.sheet(number);
			// several sheets may be too small before one is not
			if (bare == null) {
				break;
			}
			List<Demand> demands = new ArrayList<>();
			Arrangement at = filling.fill(bare, demands, rest);
			sheets.add(new Sheet(number, at, demands));
			Set<Demand> laid = Collections.newSetFromMap(new IdentityHashMap<>());
			laid.addAll(demands);
			rest.removeIf(laid::contains);
			filled.accept(rest);
			empty = demands.isEmpty() && at.fixed == 0 ? empty + 1 : 0;
			if (empty > 0 && sameFromHere(number)) {
				break;
			}
		}
		while (!sheets.isEmpty() && sheets.get(sheets.size() - 1).demands().isEmpty()
				&& sheets.get(sheets.size() - 1).at().fixed == 0) {
			sheets.remove(sheets.size() - 1);
		}
		left.addAll(rest);
	}

	/** Whether the sheets that follow are as large and as bare as this one: then they would stay empty too. */
	private boolean sameFromHere(int number) {
		Arrangement next = supply.sheet(number + 1);
		return next == null || next.fixed == 0 && supply.isLastKind(number);
	}

	/** Whether a sheet was saved or something moved forward. @param told after each that is */
	void tighten(SplittableRandom random, Epochs epochs, Effort effort, Runnable told) {
		Map<String, Arrangement> known = new HashMap<>();
		// a sheet that cannot be saved is tried at again, with more patience each time
		int patience = PATIENCE;
		while (sheets.size() > 1 && patience <= MOST_PATIENCE && !effort.isOver()) {
			boolean moved = false;
			Set<String> hopeless = new HashSet<>();
			for (int i = 0; i + 1 < sheets.size() && !effort.isOver(); i++) {
				Misfits misfits = new Misfits(shapes);
				for (Demand demand : later(i)) {
					if (effort.isOver()) {
						return;
					}
					String key = sheets.get(i).content() + "+" + demand.shape();
					if (hopeless.contains(key) || misfits.contains(demand.shape()) || isFull(sheets.get(i), demand)) {
						continue;
					}
					Arrangement more = sheets.get(i).at().fixed > 0 ? null : known.get(key);
					if (more == null) {
						more = insert(sheets.get(i).at(), demand.shape(), patience, random, epochs, effort);
					}
					if (more == null) {
						hopeless.add(key);
						misfits.add(demand.shape());
						continue;
					}
					known.put(key, more);
					misfits = new Misfits(shapes);
					put(i, more, demand);
					moved = true;
					told.run();
				}
			}
			patience = moved ? PATIENCE : 2 * patience;
		}
	}

	private boolean isFull(Sheet sheet, Demand demand) {
		double area = shapes.area[demand.shape()];
		for (int s : sheet.at().shape) {
			area += shapes.area[s];
		}
		return area > FULL * sheet.at().length * sheet.at().width;
	}

	/** Of each shape on later sheets one, of the last sheet first; large ones first. */
	private List<Demand> later(int sheet) {
		Map<Integer, Demand> byShape = new HashMap<>();
		for (int i = sheets.size() - 1; i > sheet; i--) {
			for (Demand demand : sheets.get(i).demands()) {
				byShape.putIfAbsent(demand.shape(), demand);
			}
		}
		return byShape.values().stream().sorted((a, b) -> {
			int byArea = Double.compare(shapes.area[b.shape()], shapes.area[a.shape()]);
			return byArea != 0 ? byArea : Integer.compare(a.shape(), b.shape());
		}).toList();
	}

	private Arrangement insert(Arrangement at, int shape, int patience, SplittableRandom random, Epochs epochs,
			Effort effort) {
		List<Effort> slices = IntStream.range(0, Epochs.SEARCHERS).mapToObj(s -> effort.slice(Epochs.STEPS)).toList();
		List<Callable<Arrangement>> tries = new ArrayList<>();
		for (Effort slice : slices) {
			SplittableRandom own = random.split();
			tries.add(() -> {
				Arrangement more = at.with(shape);
				return new Separation(more, own).run(patience, STRIKES, slice) ? more : null;
			});
		}
		List<Arrangement> results = epochs.meet(tries);
		effort.step(slices.stream().mapToLong(s -> s.steps() - effort.steps()).max().orElse(0));
		return results.stream().filter(Objects::nonNull).findFirst().orElse(null);
	}

	private void put(int to, Arrangement more, Demand demand) {
		for (int i = sheets.size() - 1; i > to; i--) {
			int place = sheets.get(i).demands().indexOf(demand);
			if (place >= 0) {
				Sheet from = sheets.get(i);
				List<Demand> rest = new ArrayList<>(from.demands());
				rest.remove(place);
				sheets.set(i, new Sheet(from.number(), from.at().without(from.at().fixed + place), rest));
				break;
			}
		}
		List<Demand> demands = new ArrayList<>(sheets.get(to).demands());
		demands.add(demand);
		// a layout known from another sheet lists equal parts in another order
		Sheet sheet = inOrder(sheets.get(to).number(), more, demands);
		sheets.set(to, sheet);
		sheets.removeIf(s -> s.demands().isEmpty() && s.at().fixed == 0);
	}

	private Sheet inOrder(int number, Arrangement at, List<Demand> demands) {
		List<Demand> rest = new ArrayList<>(demands);
		List<Demand> ordered = new ArrayList<>();
		for (int p = at.fixed; p < at.parts(); p++) {
			int shape = at.shape[p];
			Demand demand = rest.stream().filter(d -> d.shape() == shape).findFirst().orElseThrow();
			rest.remove(demand);
			ordered.add(demand);
		}
		return new Sheet(number, at.copy(), ordered);
	}

	/** Makes the last sheet's parts take as little of its length as the budget gives, so that a piece is left over. */
	void squeezeLast(SplittableRandom random, Epochs epochs, Effort effort, Runnable told) {
		if (sheets.isEmpty()) {
			return;
		}
		int last = sheets.size() - 1;
		Sheet sheet = sheets.get(last);
		double length = sheet.at().length;
		Arrangement best = new Strip(sheet.at(), random, epochs).run(effort, better -> {
			take(last, sheet, better, length);
			told.run();
		});
		take(last, sheet, best, length);
	}

	private void take(int last, Sheet sheet, Arrangement better, double length) {
		Arrangement at = better.copy();
		at.length = length;
		sheets.set(last, new Sheet(sheet.number(), at, sheet.demands()));
	}
}
