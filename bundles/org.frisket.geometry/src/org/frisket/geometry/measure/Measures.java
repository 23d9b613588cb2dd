package org.frisket.geometry.measure;

import org.frisket.geometry.Piece;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Tolerance;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Sizes of a piece beyond those it knows itself. */
public final class Measures {

	private Measures() {
	}

	/**
	 * The sides in mm of the smallest box, turned any way, that holds a piece.
	 *
	 * @param narrow not more than {@code wide}
	 */
	public record Box(double narrow, double wide) {
	}

	/** The box of least area, to within the tolerance. */
	public static Box smallestBox(Piece piece, Tolerance tolerance) {
		Geometry box = MinimumAreaRectangle.getMinimumRectangle(Polygons.of(piece, tolerance.mm()));
		Coordinate[] corners = box.getCoordinates();
		double one = corners[0].distance(corners[1]);
		double other = corners[corners.length > 2 ? 2 : 0].distance(corners[1]);
		return new Box(Math.min(one, other), Math.max(one, other));
	}

	/** Radius in mm of the largest disc inside a piece, to within the tolerance. */
	public static double inscribedRadius(Piece piece, Tolerance tolerance) {
		Polygon polygon = Polygons.of(piece, tolerance.mm() / 2);
		return MaximumInscribedCircle.getRadiusLine(polygon, tolerance.mm() / 2).getLength();
	}
}
