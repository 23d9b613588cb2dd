package org.frisket.print.marks;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;

/**
 * A register mark on a sheet.
 *
 * @param design how it is drawn
 * @param place  where, mm from the top left of the sheet
 * @param turn   of it, in radians from the x axis towards the y axis
 */
public record Mark(MarkDesign design, Point place, double turn) {

	/** What is printed. */
	public Region region() {
		return design.shape(place, turn);
	}

	public Bounds bounds() {
		return region().bounds();
	}
}
