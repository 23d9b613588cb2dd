package org.frisket.editing.arranging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;

/** Makes the gaps between neighbours equal; the two outermost elements stay. Gaps may be negative: an overlap. */
public final class DistributeElements extends ShiftElements {

	private static final int FEWEST = 3;

	/** Along which line the elements stand. */
	public enum Direction {
		ACROSS, DOWN
	}

	private final Direction direction;

	/** @param boxes where the elements are seen now */
	public DistributeElements(Map<? extends Element, Box> boxes, Direction direction) {
		super(NLS.bind(Messages.DistributeElements_name, Targets.spoken(boxes.keySet())), boxes);
		this.direction = direction;
	}

	@Override
	Map<Element, Shift> shifts(Map<Element, Box> leaders) {
		Map<Element, Shift> shifts = new LinkedHashMap<>();
		if (leaders.size() < FEWEST) {
			return shifts;
		}
		List<Map.Entry<Element, Box>> row = new ArrayList<>(leaders.entrySet());
		row.sort(Comparator.comparingDouble(entry -> start(entry.getValue()) + end(entry.getValue())));
		double taken = row.stream().mapToDouble(entry -> end(entry.getValue()) - start(entry.getValue())).sum();
		double first = start(row.get(0).getValue());
		double gap = (end(row.get(row.size() - 1).getValue()) - first - taken) / (row.size() - 1);
		double at = first;
		for (int i = 0; i < row.size(); i++) {
			Box box = row.get(i).getValue();
			boolean inner = i > 0 && i < row.size() - 1;
			double by = inner ? at - start(box) : 0;
			shifts.put(row.get(i).getKey(), direction == Direction.ACROSS ? new Shift(by, 0) : new Shift(0, by));
			at += end(box) - start(box) + gap;
		}
		return shifts;
	}

	private double start(Box box) {
		return direction == Direction.ACROSS ? box.minX() : box.minY();
	}

	private double end(Box box) {
		return direction == Direction.ACROSS ? box.maxX() : box.maxY();
	}
}
