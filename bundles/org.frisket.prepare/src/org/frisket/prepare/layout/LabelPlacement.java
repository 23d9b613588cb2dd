package org.frisket.prepare.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Bounds;

/**
 * Finds a place for each label near the thing it names, so that no two labels overlap. Whoever comes first has the
 * choice; a label for which there is no room near its thing gets none. Where it can be had without searching long, no
 * label lies across the border of a thing either. All lengths are in one unit of the caller's.
 */
public final class LabelPlacement {

	/** A thing and the size of the label that names it. */
	public record Label(Bounds thing, double width, double height) {
	}

	private record Cell(long column, long row) {
	}

	/** With more things than this there are borders everywhere. */
	private static final int MOST_BORDERS = 200;

	private final List<Bounds> borders;
	private final double gap;
	private final double cell;
	private final Map<Cell, List<Bounds>> taken = new HashMap<>();

	private LabelPlacement(List<Bounds> borders, double gap, double cell) {
		this.borders = borders;
		this.gap = gap;
		this.cell = cell;
	}

	/**
	 * Where each label goes, in the order of the labels; an empty box for one that goes nowhere.
	 *
	 * @param gap least distance of a label from its thing and from other labels
	 */
	public static List<Bounds> place(List<Label> labels, double gap) {
		double largest = labels.stream().mapToDouble(label -> Math.max(label.width(), label.height())).max().orElse(1);
		List<Bounds> things = labels.size() > MOST_BORDERS ? List.of() : labels.stream().map(Label::thing).toList();
		LabelPlacement placement = new LabelPlacement(things, gap, Math.max(largest + gap, 1));
		return labels.stream().map(placement::place).toList();
	}

	private Bounds place(Label label) {
		if (label.thing().isEmpty()) {
			return Bounds.EMPTY;
		}
		List<Bounds> free = candidates(label).stream().filter(this::isFree).toList();
		Bounds place = free.stream()
				.filter(candidate -> borders.stream().noneMatch(thing -> isAcross(candidate, thing))).findFirst()
				.orElse(free.isEmpty() ? Bounds.EMPTY : free.get(0));
		if (!place.isEmpty()) {
			take(place);
		}
		return place;
	}

	/** Whether a box lies partly in a thing and partly outside. */
	private static boolean isAcross(Bounds box, Bounds thing) {
		return box.intersects(thing) && !(thing.minX() < box.minX() && thing.minY() < box.minY()
				&& thing.maxX() > box.maxX() && thing.maxY() > box.maxY());
	}

	/** Above and below at the corners, then beside, then within; the likeliest to be read first. */
	private List<Bounds> candidates(Label label) {
		Bounds thing = label.thing();
		double width = label.width();
		double height = label.height();
		double above = thing.minY() - gap - height;
		double below = thing.maxY() + gap;
		double centre = thing.centre().x() - width / 2;
		double middle = thing.centre().y() - height / 2;
		double[][] corners = { { thing.minX(), above }, { thing.minX(), below }, { thing.maxX() - width, above },
				{ thing.maxX() - width, below }, { centre, above }, { centre, below }, { thing.maxX() + gap, middle },
				{ thing.minX() - gap - width, middle }, { thing.minX() + gap, thing.minY() + gap },
				{ thing.minX() + gap, thing.maxY() - gap - height }, { centre, middle } };
		List<Bounds> candidates = new ArrayList<>();
		for (double[] corner : corners) {
			candidates.add(new Bounds(corner[0], corner[1], corner[0] + width, corner[1] + height));
		}
		return candidates;
	}

	private boolean isFree(Bounds box) {
		Bounds wide = box.grown(gap);
		for (Cell each : cells(wide)) {
			for (Bounds other : taken.getOrDefault(each, List.of())) {
				if (other.intersects(wide)) {
					return false;
				}
			}
		}
		return true;
	}

	private void take(Bounds box) {
		cells(box).forEach(each -> taken.computeIfAbsent(each, key -> new ArrayList<>()).add(box));
	}

	private List<Cell> cells(Bounds box) {
		List<Cell> cells = new ArrayList<>();
		for (long column = index(box.minX()); column <= index(box.maxX()); column++) {
			for (long row = index(box.minY()); row <= index(box.maxY()); row++) {
				cells.add(new Cell(column, row));
			}
		}
		return cells;
	}

	private long index(double at) {
		return (long) Math.floor(at / cell);
	}
}
