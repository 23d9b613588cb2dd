package org.frisket.geometry.measure;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Geometry;

/**
 * Everything that is measured of a region and of lines beside it. Lengths are in mm, places in the frame of the region.
 *
 * @param area         in mm², of the curves themselves by Green's theorem: exact but for rounding
 * @param length       of all contours and lines; adaptive Gauss-Legendre quadrature, relative error below 1e-9
 * @param bounds       tight round the curves themselves, of contours and lines
 * @param smallestBox  the box of least area, turned any way, round the region, to within the tolerance; empty without
 *                     area
 * @param leastWidth   the least distance of two parallel lines that hold the region between them, to within the
 *                     tolerance; 0 without area
 * @param thinnest     the narrowest place of the material, as {@link StrokeWidths} defines it; empty without area
 * @param thickest     diameter of the largest disc inside the region, to within the tolerance; 0 without area
 * @param narrowestGap where two pieces come nearest to each other, to within the tolerance; empty for fewer than two
 * @param pieces       connected pieces
 * @param holes        of all pieces
 * @param nodes        of contours and lines
 * @param lines        how many lines there are beside the region
 * @param sharpest     the corner of the material with the least angle; empty if there is none below 180 degrees
 * @param centre       of the area, exact but for rounding; empty without area
 */
public record RegionMeasures(double area, double length, Bounds bounds, Optional<Measures.Box> smallestBox,
		double leastWidth, Optional<StrokeWidths.Width> thinnest, double thickest,
		Optional<StrokeWidths.Width> narrowestGap, int pieces, int holes, int nodes, int lines,
		Optional<SharpCorners.Corner> sharpest, Optional<Point> centre) {

	/**
	 * @param lines  that belong to it but enclose nothing
	 * @param memory of pieces that are the same but for their place
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static RegionMeasures of(Region region, List<Contour> lines, Tolerance tolerance, Memory memory,
			Monitor monitor) {
		StrokeWidths.Width thinnest = null;
		double thickest = 0;
		for (Piece piece : region.pieces()) {
			monitor.check();
			Thickness thickness = Thickness.of(piece, tolerance, memory, monitor);
			thickest = Math.max(thickest, thickness.thickest());
			if (thinnest == null || thickness.thinnest().mm() < thinnest.mm()) {
				thinnest = new StrokeWidths.Width(thickness.thinnest().mm(),
						thickness.thinnest().place().plus(piece.outer().start()));
			}
		}
		Geometry flat = region.isEmpty() ? null : Polygons.of(region, tolerance.mm() / 2);
		return new RegionMeasures(region.area(),
				region.perimeter() + lines.stream().mapToDouble(Contour::length).sum(),
				lines.stream().map(Contour::bounds).reduce(region.bounds(), Bounds::with),
				Optional.ofNullable(flat).map(Measures::smallestBox),
				flat == null ? 0 : new MinimumDiameter(flat).getLength(), Optional.ofNullable(thinnest), thickest,
				NarrowestGap.of(region, (one, other) -> true, tolerance, monitor), region.pieces().size(),
				region.pieces().stream().mapToInt(piece -> piece.holes().size()).sum(),
				region.nodeCount() + lines.stream().mapToInt(Contour::nodeCount).sum(), lines.size(),
				SharpCorners.sharpest(region.contours()), Moments.centre(region));
	}

	/** Places are relative to where the outer contour starts. */
	private record Thickness(StrokeWidths.Width thinnest, double thickest) {

		static Thickness of(Piece piece, Tolerance tolerance, Memory memory, Monitor monitor) {
			record Key(Likeness piece, Tolerance tolerance) {
			}
			return memory.get(new Key(Likeness.of(piece), tolerance), () -> {
				Point origin = piece.outer().start();
				StrokeWidths widths = StrokeWidths.of(new Region(List.of(piece))
						.transformed(Transform.translation(-origin.x(), -origin.y())).pieces().get(0), tolerance, monitor);
				return new Thickness(widths.thinnest(tolerance), widths.widest());
			});
		}
	}
}
