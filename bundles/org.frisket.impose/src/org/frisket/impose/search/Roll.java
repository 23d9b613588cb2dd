package org.frisket.impose.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;

import org.frisket.impose.Ground;
import org.frisket.impose.Layout;
import org.frisket.impose.Placement;
import org.frisket.impose.shape.Solid;

/** Parts on a roll: as a whole, or in sections one behind the other if there are many. */
final class Roll {

	/** Parts that are laid out together. */
	private static final int SECTION = 150;

	private final Problem problem;
	private final Shapes shapes;
	private final Ground ground;
	private final Effort effort;
	private final SplittableRandom random;
	private final Consumer<Layout> offer;

	/** @param offer told of each layout that may be better */
	Roll(Problem problem, Ground ground, Effort effort, SplittableRandom random, Consumer<Layout> offer) {
		this.problem = problem;
		shapes = problem.shapes;
		this.ground = ground;
		this.effort = effort;
		this.random = random;
		this.offer = offer;
	}

	void lay(Epochs epochs) {
		double width = ground.width() - 2 * problem.rim;
		List<Demand> fits = new ArrayList<>();
		List<Demand> left = new ArrayList<>();
		problem.order.forEach(d -> (narrow(d.shape(), width) ? fits : left).add(d));
		Arrangement first = problem.bare(0, Double.MAX_VALUE, width);
		for (Demand demand : fits) {
			first = first.with(demand.shape());
		}
		rows(first);
		offer.accept(layout(List.of(first), left));
		if (first.parts() - first.fixed == 0) {
			return;
		}
		if (first.parts() <= SECTION) {
			Arrangement start = first.copy();
			if (lay(start)) {
				first = start.extent() < first.extent() ? start : first;
			}
			offer.accept(layout(List.of(first), left));
			first.length = first.extent();
			Arrangement found = new Strip(first, random, epochs).run(effort,
					shorter -> offer.accept(layout(List.of(shorter), left)));
			offer.accept(layout(List.of(found), left));
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
			Arrangement section = problem.bare(s == 0 ? 0 : -1, Double.MAX_VALUE, width);
			for (int i = s; i < fits.size(); i += count) {
				section = section.with(fits.get(i).shape());
			}
			rows(section);
			sections.add(section);
		}
		offer.accept(layout(sections, left));
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
				offer.accept(layout(sections, left));
			}));
			effort.used(share);
			offer.accept(layout(sections, left));
		}
	}

	private Layout layout(List<Arrangement> sections, List<Demand> left) {
		List<Placement> placements = new ArrayList<>();
		double from = 0;
		for (Arrangement section : sections) {
			problem.add(section, 0, from, placements);
			from += section.extent();
		}
		return new Layout(placements.isEmpty() ? List.of() : List.of(ground), placements, problem.left(left),
				placements.isEmpty() ? 0 : from + 2 * problem.rim);
	}
}
