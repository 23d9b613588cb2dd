package org.frisket.editing.arranging;

import java.util.LinkedHashMap;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;

/** Brings the same edge or the centres of several elements onto one line of the box around them all. */
public final class AlignElements extends ShiftElements {

	/** What comes onto one line. */
	public enum Edge {
		LEFT, CENTRE, RIGHT, TOP, MIDDLE, BOTTOM
	}

	private final Edge edge;

	/** @param boxes where the elements are seen now */
	public AlignElements(Map<? extends Element, Box> boxes, Edge edge) {
		super(NLS.bind(Messages.AlignElements_name, Targets.spoken(boxes.keySet())), boxes);
		this.edge = edge;
	}

	@Override
	Map<Element, Shift> shifts(Map<Element, Box> leaders) {
		Map<Element, Shift> shifts = new LinkedHashMap<>();
		if (leaders.size() > 1) {
			Box all = around(leaders.values());
			leaders.forEach((element, box) -> shifts.put(element, shift(box, all)));
		}
		return shifts;
	}

	private Shift shift(Box box, Box all) {
		return switch (edge) {
		case LEFT -> new Shift(all.minX() - box.minX(), 0);
		case CENTRE -> new Shift((all.minX() + all.maxX() - box.minX() - box.maxX()) / 2, 0);
		case RIGHT -> new Shift(all.maxX() - box.maxX(), 0);
		case TOP -> new Shift(0, all.minY() - box.minY());
		case MIDDLE -> new Shift(0, (all.minY() + all.maxY() - box.minY() - box.maxY()) / 2);
		case BOTTOM -> new Shift(0, all.maxY() - box.maxY());
		};
	}
}
