package org.frisket.ui.views.internal.repairs;

import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.frisket.prepare.repair.RepairPlanner;
import org.frisket.ui.bench.JobOnBench;

/**
 * Which outlines of a job are looked at.
 *
 * @param selected ids of what was selected when repairs were asked for; empty for all outlines
 */
record RepairScope(JobOnBench bench, List<String> selected) {

	/** What is selected now, or all of it if nothing is. */
	static RepairScope of(JobOnBench bench) {
		return new RepairScope(bench, bench.selection().stream().map(Element::getId).toList());
	}

	/** Those that there are now. */
	List<Outline> outlines() {
		List<Element> chosen = selected.stream().flatMap(id -> Jobs.element(bench.job(), id).stream()).toList();
		return chosen.isEmpty() && !selected.isEmpty() ? List.of() : RepairPlanner.outlines(bench.job(), chosen);
	}

	/** Why there are no outlines to look at. */
	String why() {
		boolean some = Jobs.elements(bench.job()).stream().anyMatch(Outline.class::isInstance);
		if (!some) {
			return Messages.RepairsView_noOutlines;
		}
		return selected.isEmpty() ? Messages.RepairsView_allAway : Messages.RepairsView_otherSelection;
	}

	/** How many there are. */
	String text() {
		int count = outlines().size();
		return count == 1 ? Messages.RepairsView_oneOutline
				: NLS.bind(selected.isEmpty() ? Messages.RepairsView_outlines : Messages.RepairsView_selectedOutlines, count);
	}
}
