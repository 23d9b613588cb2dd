package org.frisket.sheets.imposing;

import java.util.List;

import org.frisket.model.Sheet;

/**
 * Sheets with parts on them, not yet in a job.
 *
 * @param sheets in the order in which they are worked
 * @param left   what found no place
 */
public record SheetPlan(List<PlannedSheet> sheets, List<NoRoom> left) {

	public SheetPlan {
		sheets = List.copyOf(sheets);
		left = List.copyOf(left);
	}

	/** How many copies of parts lie on the sheets. */
	public int parts() {
		return sheets.stream().mapToInt(sheet -> sheet.parts().size()).sum();
	}

	/** The parts' share of all sheets, from 0 to 1; 0 without any. */
	public double utilisation() {
		double area = sheets.stream().mapToDouble(sheet -> sheet.width() * sheet.height()).sum();
		return area > 0 ? sheets.stream().mapToDouble(PlannedSheet::partsArea).sum() / area : 0;
	}

	/** As {@link org.frisket.editing.sheets.LaySheets} takes them: new ones without ids. */
	public List<Sheet> toSheets() {
		return sheets.stream().map(PlannedSheet::toSheet).toList();
	}
}
