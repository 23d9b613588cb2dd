package org.frisket.editing.arranging;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Groupings;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;

/**
 * Shifts several elements each by a distance of its own; aligning and distributing come to that. What follows one
 * of the others is left out of the reckoning, since it comes along by itself. Elements that make up a group have one
 * box together, and are shifted as one.
 */
abstract class ShiftElements extends RecordingEdit {

	/** A shift below this many mm is what rounding leaves of none. */
	private static final double NOTHING = 1e-9;

	/** The boxes of the elements, in the order they were given. */
	private final Map<Element, Box> boxes;

	ShiftElements(String name, Map<? extends Element, Box> boxes) {
		super(name);
		this.boxes = new LinkedHashMap<>(boxes);
	}

	/** Shifts in mm to the right and down for each element that leads; one of them stands for each group. */
	abstract Map<Element, Shift> shifts(Map<Element, Box> leaders);

	record Shift(double dx, double dy) {

		boolean isNothing() {
			return Math.abs(dx) < NOTHING && Math.abs(dy) < NOTHING;
		}
	}

	@Override
	public final boolean canApply() {
		return Targets.freeInOneJob(boxes.keySet())
				&& shifts().values().stream().anyMatch(shift -> !shift.isNothing());
	}

	private Map<Element, Shift> shifts() {
		Map<Element, Box> boxed = leaders();
		Map<Element, List<Element>> others = new LinkedHashMap<>();
		for (List<Element> block : Groupings.blocks(Jobs.jobOf(boxes.keySet().iterator().next()), boxes.keySet())) {
			List<Element> members = block.stream().filter(boxed::containsKey).toList();
			if (members.size() > 1) {
				boxed.put(members.get(0), around(members.stream().map(boxed::get).toList()));
				others.put(members.get(0), members.subList(1, members.size()));
				boxed.keySet().removeAll(others.get(members.get(0)));
			}
		}
		Map<Element, Shift> shifts = shifts(boxed);
		others.forEach((first, rest) -> rest.forEach(element -> {
			if (shifts.containsKey(first)) {
				shifts.put(element, shifts.get(first));
			}
		}));
		return shifts;
	}

	private Map<Element, Box> leaders() {
		Set<Element> followers = Targets.followers(Jobs.jobOf(boxes.keySet().iterator().next()), boxes.keySet());
		Map<Element, Box> leaders = new LinkedHashMap<>(boxes);
		leaders.keySet().removeAll(followers);
		return leaders;
	}

	@Override
	protected final Collection<? extends EObject> scope() {
		return new LinkedHashSet<>(boxes.keySet());
	}

	@Override
	protected final void change() {
		shifts().forEach((element, shift) -> {
			if (!shift.isNothing()) {
				element.setTransform(element.getTransform().then(Matrix.translation(shift.dx(), shift.dy())));
			}
		});
	}

	static Box around(Collection<Box> boxes) {
		return List.copyOf(boxes).stream().reduce(Box::with).orElseThrow();
	}
}
