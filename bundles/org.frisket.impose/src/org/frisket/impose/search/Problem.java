package org.frisket.impose.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.impose.Ground;
import org.frisket.impose.Imposition;
import org.frisket.impose.Part;
import org.frisket.impose.Placement;
import org.frisket.impose.shape.Clearance;
import org.frisket.impose.shape.Dents;
import org.frisket.impose.shape.Solid;

/**
 * An imposition as a search sees it. Half the gap is part of each shape, all round, so that shapes may touch each other;
 * the margins are less by as much.
 */
public final class Problem implements Sheets.Supply {

	/** Of the sheet's width: what numbers may be off by, so much more than touching all parts keep apart. */
	private static final double SLACK = 1e-8;
	/** In slacks: so much longer and wider than it is a sheet may be taken, for parts that fit exactly. */
	private static final double EXACT_FIT = 200;

	final Shapes shapes;
	/** All copies, in the order in which they are to be laid. */
	final List<Demand> order = new ArrayList<>();
	/** Between the edge of a sheet and what shapes may reach, in mm. */
	final double rim;
	private final Imposition imposition;
	/** Of each shape what it is of. */
	private final List<Part> partOf = new ArrayList<>();
	private final Map<Integer, List<Placement>> fixed = new HashMap<>();
	/** The first shape that is one of the fixed placements'; they follow in their order. */
	private final int firstFixed;
	private final double slack;

	/** @throws java.util.concurrent.CancellationException if the monitor cancels */
	public Problem(Imposition imposition, Monitor monitor) {
		this.imposition = imposition;
		rim = imposition.margin() - imposition.gap() / 2;
		firstFixed = imposition.parts().size();
		slack = SLACK * imposition.grounds().stream().mapToDouble(Ground::width).max().orElse(1);
		shapes = shapes(monitor);
		demand();
	}

	Imposition imposition() {
		return imposition;
	}

	private Shapes shapes(Monitor monitor) {
		List<Solid> solids = new ArrayList<>();
		List<int[]> allowed = new ArrayList<>();
		Map<Region, Solid> made = new HashMap<>();
		int steps = imposition.parts().stream().mapToInt(p -> p.turning().steps()).reduce(1, Problem::common);
		int different = (int) imposition.parts().stream().map(Part::region).distinct().count();
		int pieces = Dents.mostPieces(different, steps);
		for (Part part : imposition.parts()) {
			monitor.check();
			solids.add(made.computeIfAbsent(part.region(), r -> Clearance.of(r, imposition.gap(), this::isUseful, pieces)));
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

	@Override
	public Arrangement sheet(int number) {
		int n = number;
		for (Ground ground : imposition.grounds()) {
			if (n < ground.atHand()) {
				return bare(number, ground.length() - 2 * rim, ground.width() - 2 * rim);
			}
			n -= ground.atHand();
		}
		return null;
	}

	@Override
	public boolean isLastKind(int number) {
		List<Ground> grounds = imposition.grounds();
		return grounds.subList(0, grounds.size() - 1).stream().mapToLong(Ground::atHand).sum() <= number;
	}

	/** A sheet of any size with what is fixed on one. @param number of that one; below 0 for none */
	Arrangement bare(int number, double exactLength, double exactWidth) {
		double length = exactLength + EXACT_FIT * slack;
		double width = exactWidth + EXACT_FIT * slack;
		List<Placement> here = fixed.getOrDefault(number, List.of());
		int[] shape = here.stream().mapToInt(placement -> firstFixed + imposition.fixed().indexOf(placement)).toArray();
		Arrangement at = new Arrangement(shapes, shape, here.size(), length, width);
		for (int p = 0; p < here.size(); p++) {
			Point centre = here.get(p).region().bounds().centre();
			at.x[p] = centre.x() - rim;
			at.y[p] = centre.y() - rim;
		}
		return at;
	}

	Ground ground(int number) {
		int n = number;
		for (Ground ground : imposition.grounds()) {
			if (n < ground.atHand()) {
				return ground;
			}
			n -= ground.atHand();
		}
		throw new IllegalArgumentException("sheet " + number);
	}

	/** What is left, by part. */
	List<Part> left(List<Demand> demands) {
		Map<Integer, Integer> counts = new TreeMap<>();
		demands.forEach(d -> counts.merge(d.shape(), 1, Integer::sum));
		return counts.entrySet().stream().map(e -> {
			Part part = partOf.get(e.getKey());
			return new Part(part.id(), part.region(), e.getValue(), part.turning(), part.priority());
		}).toList();
	}

	/** Where the parts of an arrangement lie. @param from where it begins on the sheet, in mm along it */
	void add(Arrangement at, int sheet, double from, List<Placement> placements) {
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
}
