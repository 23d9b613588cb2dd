package org.frisket.prepare.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.Edit;
import org.frisket.editing.EditGroup;
import org.frisket.editing.shapes.ChangePath;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;

/**
 * What a course of repair would do to the outlines of a job.
 *
 * @param outlines  those that would change, in the order of the job; of the others nothing would be another byte
 * @param untouched those that cannot be repaired, and why
 */
public record RepairPlan(List<OutlineRepair> outlines, List<Untouched> untouched, Tolerance tolerance) {

	public RepairPlan {
		outlines = List.copyOf(outlines);
		untouched = List.copyOf(untouched);
	}

	/** Every single one. */
	public List<PlannedRepair> repairs() {
		return outlines.stream().flatMap(outline -> outline.repairs().stream()).toList();
	}

	public boolean isEmpty() {
		return outlines.isEmpty();
	}

	/** The furthest that anything moves which is neither taken away nor added on purpose, in mm; may be infinite. */
	public double movement() {
		return outlines.stream().mapToDouble(outline -> outline.movement().mm()).max().orElse(0);
	}

	/** Whether nothing moves further than the tolerance, as far as the figures are exact. */
	public boolean isWithinTolerance() {
		return outlines.stream().allMatch(outline -> outline.movement().isWithin(tolerance));
	}

	/**
	 * How far anything moves, as a sentence.
	 *
	 * @param length writes a length in mm
	 */
	public String proof(DoubleFunction<String> length) {
		if (!Double.isFinite(movement())) {
			return Messages.RepairPlan_unmeasured;
		}
		return NLS.bind(isWithinTolerance() ? Messages.RepairPlan_within : Messages.RepairPlan_beyond,
				length.apply(movement()), length.apply(tolerance.mm()));
	}

	/**
	 * All of it as one edit. Empty if there is nothing to do, or if an outline is another by now than the one that this was
	 * worked out for.
	 */
	public Optional<Edit> edit(Job job) {
		String name = outlines.size() == 1 ? Messages.RepairPlan_editOne : Messages.RepairPlan_edit;
		List<Edit> edits = new ArrayList<>();
		for (OutlineRepair repair : outlines) {
			if (!(Jobs.element(job, repair.element()).orElse(null) instanceof Outline outline)
					|| !repair.before().equals(outline.getPathData())) {
				return Optional.empty();
			}
			edits.add(ChangePath.repaired(name, outline, repair.after()));
		}
		return edits.isEmpty() ? Optional.empty() : Optional.of(new EditGroup(name, edits));
	}
}
