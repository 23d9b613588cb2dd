package org.frisket.ui.bench.internal.picture;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.Picture;
import org.frisket.prepare.PreparedElement;

/**
 * What is shown round a picture that is worked along the contour of its art.
 *
 * @param mm    how far its print goes on there, in the job's frame
 * @param bleed where that ends; empty if it has no bleed
 */
public record PictureRim(double mm, Outline bleed) {

	/** Null for what is no picture with an edge. */
	static PictureRim of(PreparedElement prepared) {
		if (prepared.region().isEmpty() || !(prepared.element() instanceof Picture picture) || picture.getEdge() == null) {
			return null;
		}
		double mm = mm(picture, prepared);
		return new PictureRim(mm, mm > 0
				? Offset.of(prepared.region(), mm, Corners.ROUND, Holes.KEEP, Tolerance.DEFAULT, Monitor.NONE).toOutline()
				: Outline.EMPTY);
	}

	/** Whether an element would have this one; null is that of an element without. */
	static boolean isOf(PictureRim rim, PreparedElement prepared) {
		boolean edged = prepared.element() instanceof Picture picture && picture.getEdge() != null;
		return edged == (rim != null) && (rim == null || rim.mm == mm((Picture) prepared.element(), prepared));
	}

	private static double mm(Picture picture, PreparedElement prepared) {
		return picture.getBleed() * Math.sqrt(Math.abs(prepared.uncleaned().placement().determinant()));
	}
}
