package org.frisket.impose.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.IntStream;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.impose.Budget;
import org.frisket.impose.Ground;
import org.frisket.impose.Imposition;
import org.frisket.impose.Layout;
import org.frisket.impose.Part;
import org.frisket.impose.Placement;
import org.frisket.impose.shape.Clearance;
import org.frisket.impose.shape.Solid;

/** From an imposition to a search, and from what it finds to layouts. */
public final class Searches {

	/** Of the sheet's width: what numbers may be off by, so much more than touching all parts keep apart. */
	private static final double SLACK = 1e-8;
	/** In slacks: so much longer and wider than it is a sheet may be taken, for parts that fit exactly. */
	private static final double EXACT_FIT = 200;
	/** Parts of a roll that are laid out together. */
	private static final int SECTION = 150;
	/** Of the budget: for saving sheets; the rest goes into the last one. */
	private static final double SAVING = 0.8;

	private final Imposition imposition;
	private final Consumer<Layout> better;
	private final Effort effort;
	private final SplittableRandom random;
	private final Shapes shapes;
	/** Of each shape what it is of. */
	private final List<Part> partOf = new ArrayList<>();
	private final List<Demand> order = new ArrayList<>();
	private final Map<Integer, List<Placement>> fixed = new HashMap<>();
	/** The first shape that is one of the fixed placements'; they follow in their order. */
	private final int firstFixed;
	private final double rim;
	private double slack;
	private Layout best;

	private Searches(Imposition imposition, Budget budget, Consumer<Layout> better, Monitor monitor) {
		this.imposition = imposition;
		this.better = better;
		effort = Effort.of(budget, monitor);
		random = new SplittableRandom(budget.seed());
		rim = imposition.margin() - imposition.gap() / 2;
		firstFixed = imposition.parts().size();
		shapes = shapes(monitor);
		demand();
	}

	/** @param better told of each better layout, on the calling thread; the first comes at once */
	public static Layout run(Imposition imposition, Budget budget, Consumer<Layout> better, Monitor monitor) {
		return new Searches(imposition, budget, better, monitor).run();
	}

	private Shapes shapes(Monitor monitor) {
		List<Solid> solids = new ArrayList<>();
		List<int[]> allowed = new ArrayList<>();
		Map<Region, Solid> made = new HashMap<>();
		int steps = imposition.parts().stream().mapToInt(p -> p.turning().steps()).reduce(1, Searches::common);
		for (Part part : imposition.parts()) {
			monitor.check();
			solids.add(made.computeIfAbsent(part.region(), r -> Clearance.of(r, imposition.gap(), this::isUseful)));
			int each = part.turning().steps();
			allowed.add(IntStream.range(0, each).map(i -> i * (steps / each)).toArray());
			partOf.add(part);
		}
		for (Placement placement : imposition.fixed()) {
			fixed.computeIfAbsent(placement.sheet(), n -> new ArrayList<>()).add(placement);
			solids.add(Clearance.of(placement.region(), imposition.gap()));
			allowed.add(new int[] { 0 });
			partOf.add(placement.part());
		}
		slack = SLACK * imposition.grounds().stream().mapToDouble(Ground::width).max().orElse(1);
		return new Shapes(solids.toArray(Solid[]::new), allowed.toArray(int[][]::new), steps, slack);
	}

	/** Whether any part may lie in a hole that is so large; a part that may be turned freely counts as half its width. */
	private boolean isUseful(double width, double height) {
		for (Part part : imposition.parts()) {
			double w = part.region().bounds().width();
			double h = part.region().bounds().height();
			boolean fits = switch (part.turning()) {
			case NONE, HALF -> w <= width && h <= height;
			case QUARTER -> Math.min(w, h) <= Math.min(width, height) && Math.max(w, h) <= Math.max(width, height);
			case FREE -> Math.min(w, h) / 2 <= Math.min(width, height);
			};
			if (fits) {
				return true;
			}
		}
		return false;
	}

	private static int common(int a, int b) {
		int x = a;
		int y = b;
		while (y != 0) {
			int r = x % y;
			x = y;
			y = r;
		}
		return a / x * b;
	}

	private void demand() {
		for (int s = 0; s < imposition.parts().size(); s++) {
			Part part = imposition.parts().get(s);
			for (int k = 0; k < part.quantity(); k++) {
				order.add(new Demand(s, part.priority()));
			}
		}
		order.sort(Comparator.comparingInt(Demand::priority).thenComparingDouble(d -> -shapes.area[d.shape()])
				.thenComparingInt(Demand::shape));
	}

	private Layout run() {
		try (Epochs epochs = new Epochs()) {
			if (imposition.grounds().get(0).isRoll()) {
				roll(epochs);
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

	// sheets

	private Arrangement bare(int number) {
		int n = number;
		for (Ground ground : imposition.grounds()) {
			if (n < ground.atHand()) {
				return bare(number, ground.length() - 2 * rim, ground.width() - 2 * rim);
			}
			n -= ground.atHand();
		}
		return null;
	}

	private Arrangement bare(int number, double exactLength, double exactWidth) {
		double length = exactLength + EXACT_FIT * slack;
		double width = exactWidth + EXACT_FIT * slack;
		List<Placement> here = fixed.getOrDefault(number, List.of());
		Arrangement at = new Arrangement(shapes, here.stream().mapToInt(placement -> firstFixed + imposition.fixed().indexOf(placement)).toArray(), here.size(), length,
				width);
		for (int p = 0; p < here.size(); p++) {
			Point centre = here.get(p).region().bounds().centre();
			at.x[p] = centre.x() - rim;
			at.y[p] = centre.y() - rim;
		}
		return at;
	}

	private Ground ground(int number) {
		int n = number;
		for (Ground ground : imposition.grounds()) {
			if (n < ground.atHand()) {
				return ground;
			}
			n -= ground.atHand();
		}
		throw new IllegalArgumentException("sheet " + number);
	}

	private void sheets(Epochs epochs) {
		Sheets rows = new Sheets(shapes, this::bare);
		rows.fillRows(order);
		offer(layout(rows));
		Sheets sheets = new Sheets(shapes, this::bare);
		sheets.fill(order, effort);
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
			add(sheet.at(), used.size(), 0, placements);
			used.add(ground(sheet.number()));
			length = sheet.at().extent() + 2 * rim;
		}
		return new Layout(used, placements, left(sheets.left()), length);
	}

	private List<Part> left(List<Demand> demands) {
		Map<Integer, Integer> counts = new TreeMap<>();
		demands.forEach(d -> counts.merge(d.shape(), 1, Integer::sum));
		return counts.entrySet().stream().map(e -> {
			Part part = partOf.get(e.getKey());
			return new Part(part.id(), part.region(), e.getValue(), part.turning(), part.priority());
		}).toList();
	}

	private void add(Arrangement at, int sheet, double from, List<Placement> placements) {
		for (int p = 0; p < at.parts(); p++) {
			int shape = at.shape[p];
			if (p < at.fixed) {
				Placement placement = imposition.fixed().get(shape - firstFixed);
				placements.add(new Placement(placement.part(), sheet, placement.centre(), placement.radians()));
			} else {
				placements.add(new Placement(partOf.get(shape), sheet, new Point(from + at.x[p] + rim, at.y[p] + rim),
						2 * Math.PI * at.turn[p] / shapes.steps));
			}
		}
	}

	// a roll

	private void roll(Epochs epochs) {
		Ground roll = imposition.grounds().get(0);
		double width = roll.width() - 2 * rim;
		List<Demand> fits = new ArrayList<>();
		List<Demand> left = new ArrayList<>();
		order.forEach(d -> (narrow(d.shape(), width) ? fits : left).add(d));
		Arrangement first = bare(0, Double.MAX_VALUE, width);
		for (Demand demand : fits) {
			first = first.with(demand.shape());
		}
		rows(first);
		offer(layout(List.of(first), left));
		if (first.parts() - first.fixed == 0) {
			return;
		}
		if (first.parts() <= SECTION) {
			Arrangement start = first.copy();
			if (lay(start)) {
				first = start.extent() < first.extent() ? start : first;
			}
			offer(layout(List.of(first), left));
			first.length = first.extent();
			Arrangement found = new Strip(first, random, epochs).run(effort,
					shorter -> offer(layout(List.of(shorter), left)));
			offer(layout(List.of(found), left));
		} else {
			sections(fits, left, width, epochs);
		}
	}

	private boolean narrow(int shape, double width) {
		for (int turn : shapes.allowed[shape]) {
			Solid solid = shapes.solid(shape, turn);
			if (solid.maxY() - solid.minY() <= width) {
				return true;
			}
		}
		return false;
	}

	private void rows(Arrangement at) {
		double from = at.fixed == 0 ? 0 : new Arrangement(shapes, Arrays.copyOf(at.shape, at.fixed), at.fixed,
				at.length, at.width).extent();
		Rows rows = new Rows(Double.MAX_VALUE, at.width);
		double[] place = new double[2];
		for (int p = at.fixed; p < at.parts(); p++) {
			for (int turn : shapes.allowed[at.shape[p]]) {
				if (rows.put(shapes.solid(at.shape[p], turn), place)) {
					at.turn[p] = turn;
					break;
				}
			}
			at.x[p] = from + place[0];
			at.y[p] = place[1];
		}
	}

	private boolean lay(Arrangement at) {
		FirstLayout layout = new FirstLayout(at);
		for (int p = at.fixed; p < at.parts(); p++) {
			if (effort.isOver() || !layout.lay(p)) {
				return false;
			}
		}
		return true;
	}

	/** Parts of all sizes in each section. */
	private void sections(List<Demand> fits, List<Demand> left, double width, Epochs epochs) {
		int count = (fits.size() + SECTION - 1) / SECTION;
		List<Arrangement> sections = new ArrayList<>();
		for (int s = 0; s < count; s++) {
			Arrangement section = bare(s == 0 ? 0 : -1, Double.MAX_VALUE, width);
			for (int i = s; i < fits.size(); i += count) {
				section = section.with(fits.get(i).shape());
			}
			rows(section);
			sections.add(section);
		}
		offer(layout(sections, left));
		for (int s = 0; s < count && !effort.isOver(); s++) {
			Effort share = effort.share(1.0 / (count - s));
			Arrangement start = sections.get(s).copy();
			if (lay(start) && start.extent() < sections.get(s).extent()) {
				sections.set(s, start);
			}
			Arrangement from = sections.get(s).copy();
			from.length = from.extent();
			int place = s;
			sections.set(s, new Strip(from, random.split(), epochs).run(share, shorter -> {
				sections.set(place, shorter.copy());
				offer(layout(sections, left));
			}));
			effort.used(share);
			offer(layout(sections, left));
		}
	}

	private Layout layout(List<Arrangement> sections, List<Demand> left) {
		List<Placement> placements = new ArrayList<>();
		double from = 0;
		for (Arrangement section : sections) {
			add(section, 0, from, placements);
			from += section.extent();
		}
		return new Layout(placements.isEmpty() ? List.of() : List.of(imposition.grounds().get(0)), placements, left(left),
				placements.isEmpty() ? 0 : from + 2 * rim);
	}
}
