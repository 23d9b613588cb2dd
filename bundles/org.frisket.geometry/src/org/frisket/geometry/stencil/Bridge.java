package org.frisket.geometry.stencil;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;

/**
 * A strip of the sheet that crosses an opening.
 *
 * @param inner where its middle leaves the island
 * @param outer where its middle reaches the other side
 * @param width in mm
 */
public record Bridge(Point inner, Point outer, double width) {

	public double length() {
		return inner.distance(outer);
	}

	/** What it takes from the opening, going on by so much into the sheet at either end. */
	Contour strip(double before, double after) {
		Point along = outer.minus(inner).unit();
		Point side = along.quarterTurn().times(width / 2);
		Point a = inner.minus(along.times(before));
		Point b = outer.plus(along.times(after));
		// counter-clockwise to the viewer, as an outer contour runs
		return Contour.polygon(List.of(a.plus(side), b.plus(side), b.minus(side), a.minus(side)));
	}
}
