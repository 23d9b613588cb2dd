package org.frisket.ui.views.internal.repairs;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.model.Job;
import org.frisket.prepare.repair.PlannedRepair;
import org.frisket.prepare.repair.RepairPlan;
import org.frisket.prepare.repair.RepairWords;
import org.frisket.prepare.repair.Untouched;
import org.frisket.ui.LengthText;
import org.frisket.ui.views.internal.ElementText;

/**
 * A line of the list of repairs.
 *
 * @param place   where it is, in mm; null for an outline that stays as it is
 * @param element the id of the outline
 * @param cells   what is written in the columns: number, repair, amount, place, step, outline
 */
record RepairLine(Point place, String element, List<String> cells) {

	/** Every repair, and then what stays as it is. */
	static List<RepairLine> of(RepairPlan plan, Job job) {
		List<RepairLine> lines = new ArrayList<>();
		for (PlannedRepair repair : plan.repairs()) {
			Point place = repair.mend().place();
			lines.add(new RepairLine(place, repair.element(),
					List.of(String.valueOf(lines.size() + 1), RepairWords.of(repair.mend().kind()),
							AmountText.of(repair.mend()), LengthText.place(place.x(), place.y()), repair.step(),
							ElementText.of(job, repair.element()))));
		}
		for (Untouched stays : plan.untouched()) {
			lines.add(new RepairLine(null, stays.element(), List.of("", Messages.RepairLine_untouched, "", "", //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					stays.reason(), ElementText.of(job, stays.element()))));
		}
		return lines;
	}

	String number() {
		return cells.get(0);
	}

	/** What the flag on its place says. */
	String text() {
		return cells.get(1) + "  " + cells.get(2); //$NON-NLS-1$
	}
}
