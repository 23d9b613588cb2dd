package org.frisket.ui.sheets.internal.sheets;

import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.sheets.SheetName;
import org.frisket.ui.LengthText;

/** What is written under a sheet: its name, how much of it is used, its stock and its size. */
final class SheetCaption {

	private SheetCaption() {
	}

	static List<String> of(Sheet sheet, Job job, Reading reading) {
		String name = SheetName.of(sheet);
		String used = share(sheet, reading);
		String size = sheet.isRoll()
				? NLS.bind(Messages.SheetsView_roll, LengthText.of(sheet.getHeight()), LengthText.of(sheet.getWidth()))
				: LengthText.size(sheet.getWidth(), sheet.getHeight());
		return List.of(two(name, used.isEmpty() ? used : NLS.bind(Messages.SheetsView_used, used)),
				two(StockSizes.name(sheet.getStock()), size));
	}

	/** Its number and its share. */
	static String brief(Sheet sheet, Job job, Reading reading) {
		return two(String.valueOf(number(sheet, job)), share(sheet, reading));
	}

	private static int number(Sheet sheet, Job job) {
		return job.getSheets().indexOf(sheet) + 1;
	}

	private static String share(Sheet sheet, Reading reading) {
		return reading.of(sheet).map(laid -> LayFeedback.percent(laid.utilisation())).orElse(""); //$NON-NLS-1$
	}

	private static String two(String one, String other) {
		if (one.isEmpty() || other.isEmpty()) {
			return one + other;
		}
		return NLS.bind(Messages.SheetsView_two, one, other);
	}
}
