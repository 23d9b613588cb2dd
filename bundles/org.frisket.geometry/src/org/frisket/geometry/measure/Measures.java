package org.frisket.geometry.measure;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
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
		return smallestBox(Polygons.of(piece, tolerance.mm()));
	}

	static Box smallestBox(Geometry flat) {
		Geometry box = MinimumAreaRectangle.getMinimumRectangle(flat);
		Coordinate[] corners = box.getCoordinates();
		double one = corners[0].distance(corners[1]);
		double other = corners[corners.length > 2 ? 2 : 0].distance(corners[1]);
		return new Box(Math.min(one, other), Math.max(one, other));
	}

	/**
	 * Diameter in mm of the largest disc in a hole, to within the tolerance; or, if that is soon seen, a value that is
	 * smaller than it and at least {@code enough}.
	 */
	public static double holeWidth(Contour hole, double enough, Tolerance tolerance, Memory memory, Monitor monitor) {
		// the area of a simple contour is less than its length times the radius of the largest disc in it (Bonnesen)
		double atLeast = 2 * Math.abs(hole.signedArea()) / hole.length();
		if (atLeast >= enough) {
			return atLeast;
		}
		record Key(Likeness hole, Tolerance tolerance) {
		}
		Piece inside = new Piece(hole.reversed(), List.of());
		return memory.get(new Key(Likeness.of(inside), tolerance), () -> StrokeWidths.of(inside, tolerance, monitor).widest());
	}

	/** Radius in mm of the largest disc inside a piece, to within the tolerance. */
	public static double inscribedRadius(Piece piece, Tolerance tolerance) {
		Polygon polygon = Polygons.of(piece, tolerance.mm() / 2);
		return MaximumInscribedCircle.getRadiusLine(polygon, tolerance.mm() / 2).getLength();
	}
}
