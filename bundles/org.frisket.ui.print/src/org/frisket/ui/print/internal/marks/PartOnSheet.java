package org.frisket.ui.print.internal.marks;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Region;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedElement;
import org.frisket.print.output.PrintOptions;
import org.frisket.sheets.LaidPart;

/**
 * A part as marks have to make way for it.
 *
 * @param title for people
 * @param room  what it takes up, mm from the upper left corner of the sheet
 * @param taken the box that no mark may stand in: with the print beyond its cut
 */
record PartOnSheet(String title, Region room, Bounds taken) {

	static PartOnSheet of(LaidPart part) {
		Bounds box = part.room().bounds();
		boolean printed = false;
		for (PreparedElement element : part.part().elements()) {
			printed |= element.has(OperationKind.PRINT);
			Bounds own = element.moved(part.place()).bounds();
			if (!own.isEmpty()) {
				box = box.with(own);
			}
		}
		return new PartOnSheet(part.part().title(), part.room(), printed ? box.grown(PrintOptions.USUAL_BLEED) : box);
	}
}
