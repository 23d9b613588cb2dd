package org.frisket.ui.sheets.internal.sheets;

import java.util.Map;
import java.util.function.BiFunction;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedJob;
import org.frisket.sheets.LaidSheets;
import org.frisket.sheets.SheetPart;

/**
 * The sheets of a job in three numbers.
 *
 * @param utilisation the parts' share of all sheets, from 0 to 1
 * @param unlaid      how many copies lie on no sheet
 * @param missing     how many copies are of parts that are no more
 */
record SheetsSummary(double utilisation, int unlaid, int missing) {

	/** Takes a moment: not for the UI thread. */
	static SheetsSummary of(Job host, Map<String, PreparedJob> jobs, Tolerance tolerance, Monitor monitor) {
		BiFunction<String, String, SheetPart> parts = LaidSheets.lookUp(jobs, tolerance, monitor);
		double area = 0;
		double laid = 0;
		int missing = 0;
		for (Sheet sheet : host.getSheets()) {
			area += sheet.getWidth() * sheet.getHeight();
			for (Placement placement : sheet.getPlacements()) {
				PartKey key = PartKey.of(host, placement);
				SheetPart part = parts.apply(key.job(), key.part());
				if (part == null) {
					missing++;
				} else {
					laid += part.room().area();
				}
			}
		}
		return new SheetsSummary(area > 0 ? laid / area : 0, Unlaid.count(host, jobs, tolerance, monitor), missing);
	}
}
