package org.frisket.sheets;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.model.Sheet;

/** What a sheet is called, for people. */
public final class SheetName {

	private SheetName() {
	}

	/** Its own name, or else its number among the sheets of its job; one without a job counts as the first. */
	public static String of(Sheet sheet) {
		if (sheet.getName() != null && !sheet.getName().isBlank()) {
			return sheet.getName();
		}
		int place = sheet.eContainer() instanceof Job job ? job.getSheets().indexOf(sheet) + 1 : 1;
		return NLS.bind(Messages.SheetName_sheet, place);
	}
}
