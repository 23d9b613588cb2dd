package org.frisket.print.output.direct;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.print.output.PrintSheet;

/**
 * The marks of a page as outlines: so they are sent to a printer over its pixels, that their edges are as sharp as
 * it can print them.
 */
public final class PageMarks {

	private PageMarks() {
	}

	/** In mm on the page, changed for its printer as the print file is. @param back whether the sheet is turned over */
	public static List<Region> of(PrintSheet sheet, boolean back) {
		Transform place = place(sheet, back);
		return sheet.plan().map(plan -> plan.marks().stream().map(mark -> mark.region().transformed(place)).toList())
				.orElse(List.of());
	}

	/** From the sheet as seen from the front to the page, changed for its printer as the print file is. */
	static Transform place(PrintSheet sheet, boolean back) {
		Bounds page = sheet.faces().page();
		Transform turned = back ? sheet.options().turn().over(page.width(), page.height()) : Transform.IDENTITY;
		return turned.then(sheet.options().printer().map(printer -> printer.forArt(page.centre())).orElse(Transform.IDENTITY));
	}
}
