package org.frisket.editing;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;

/**
 * Shifts several elements each by a distance of its own; aligning and distributing come to that. A mat that follows one
 * of the others is left out of the reckoning, since it comes along by itself.
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

	/** Shifts in mm to the right and down for each element that leads. */
	abstract Map<Element, Shift> shifts(Map<Element, Box> leaders);

	record Shift(double dx, double dy) {

		boolean isNothing() {
			return Math.abs(dx) < NOTHING && Math.abs(dy) < NOTHING;
		}
	}

	@Override
	public final boolean canApply() {
		return Targets.freeInOneJob(boxes.keySet())
				&& shifts(leaders()).values().stream().anyMatch(shift -> !shift.isNothing());
	}

	private Map<Element, Box> leaders() {
		Set<Mat> followers = Targets.followers(Jobs.jobOf(boxes.keySet().iterator().next()), boxes.keySet());
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
		shifts(leaders()).forEach((element, shift) -> {
			if (!shift.isNothing()) {
				element.setTransform(element.getTransform().then(Matrix.translation(shift.dx(), shift.dy())));
			}
		});
	}

	static Box around(Collection<Box> boxes) {
		return List.copyOf(boxes).stream().reduce(Box::with).orElseThrow();
	}
}
