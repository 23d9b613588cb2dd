package org.frisket.print.marks;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;

/**
 * A register mark on a sheet.
 *
 * @param design   how it is drawn
 * @param place    where, mm from the top left of the sheet
 * @param turn     of it, in radians from the x axis towards the y axis
 * @param mirrored whether it is drawn left for right before it is turned, as on the back of a sheet
 */
public record Mark(MarkDesign design, Point place, double turn, boolean mirrored) {

	private static final Transform MIRROR = new Transform(-1, 0, 0, 1, 0, 0);

	public Mark(MarkDesign design, Point place, double turn) {
		this(design, place, turn, false);
	}

	/** What is printed. */
	public Region region() {
		return mirrored ? design.shape().transformed(MIRROR.then(Transform.rotation(turn))
				.then(Transform.translation(place.x(), place.y()))) : design.shape(place, turn);
	}

	public Bounds bounds() {
		return region().bounds();
	}
}
