package org.frisket.print.output;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.model.Element;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedElement;
import org.frisket.sheets.LaidPart;
import org.frisket.sheets.SheetPart;

/**
 * A part as marks have to make way for it.
 *
 * @param element that it is made of
 * @param key     of the part, among those of its job
 * @param room    what it takes up, mm from the upper left corner of the sheet
 * @param taken   the box that no mark may stand in: with the print beyond its cut
 */
public record PartOnSheet(Element element, String key, Region room, Bounds taken) {

	public static PartOnSheet of(LaidPart laid) {
		SheetPart part = laid.part();
		Bounds box = laid.room().bounds();
		boolean printed = false;
		for (PreparedElement element : part.elements()) {
			printed |= element.has(OperationKind.PRINT);
			Bounds own = element.moved(laid.place()).bounds();
			if (!own.isEmpty()) {
				box = box.with(own);
			}
		}
		Element made = part.elements().stream().map(PreparedElement::element)
				.filter(each -> part.element().equals(each.getId())).findFirst()
				.orElseGet(() -> part.elements().get(0).element());
		return new PartOnSheet(made, part.key(), laid.room(),
				printed ? box.grown(PrintOptions.USUAL_BLEED) : box);
	}

	/** The same on a sheet that is turned over. */
	PartOnSheet over(Transform over) {
		Bounds box = taken.isEmpty() ? taken : Bounds.of(over.apply(new Point(taken.minX(), taken.minY())))
				.with(over.apply(new Point(taken.maxX(), taken.maxY())));
		return new PartOnSheet(element, key, room.transformed(over), box);
	}

	/** Of a single piece of the element with a sign before it, such as #2; empty for a part that is all of it. */
	public String piece() {
		return SheetPart.isPiece(key) ? key.substring(SheetPart.elementOf(key).length()) : "";
	}
}
