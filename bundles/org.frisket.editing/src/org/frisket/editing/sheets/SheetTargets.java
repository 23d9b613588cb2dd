package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;

/** What edits ask of sheets and what lies on them. */
final class SheetTargets {

	private SheetTargets() {
	}

	/** Whether there are placements, all on sheets of one job. */
	static boolean inOneJob(Collection<Placement> placements) {
		return placements.stream().allMatch(each -> sheetOf(each) != null)
				&& placements.stream().map(Jobs::jobOf).distinct().count() == 1
				&& Jobs.jobOf(placements.iterator().next()) != null;
	}

	/** Null if it lies on none. */
	static Sheet sheetOf(Placement placement) {
		return placement.eContainer() instanceof Sheet sheet ? sheet : null;
	}

	/** The sheets that placements lie on. */
	static List<? extends EObject> sheetsOf(Collection<Placement> placements) {
		return placements.stream().map(SheetTargets::sheetOf).distinct().toList();
	}

	/** Whether what lies on one sheet may come on another. */
	static boolean areAlike(Sheet one, Sheet other) {
		return Objects.equals(one.getStock(), other.getStock()) && Objects.equals(one.getColour(), other.getColour());
	}

	/** The number of one more copy of a part: the lowest that no copy of it has. */
	static int nextCopy(Job job, Placement of) {
		List<Integer> taken = job.getSheets().stream().flatMap(sheet -> sheet.getPlacements().stream())
				.filter(each -> Objects.equals(each.getJob(), of.getJob()) && Objects.equals(each.getPart(), of.getPart()))
				.map(Placement::getCopy).toList();
		int copy = 1;
		while (taken.contains(copy)) {
			copy++;
		}
		return copy;
	}

	/** As a user counts them. */
	static String spoken(Collection<Placement> placements) {
		return placements.size() == 1 ? Messages.SheetTargets_part
				: NLS.bind(Messages.SheetTargets_parts, placements.size());
	}
}
