package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * How thick a region is, place by place: the diameter of the largest disc inside the region that covers the place
 * (Hildebrand and Rüegsegger 1997). What is thinner than a width is therefore what a disc of that width cannot reach.
 * <p>
 * Taken literally every corner is thin at its tip. A part that no disc reaches counts only if it
 * <ul>
 * <li>parts what the disc does reach, or closes a ring of it: a <em>neck</em>; or
 * <li>is a whole piece; or
 * <li>is deeper than its mouth is wide: a <em>stroke</em> or spike that ends freely. The mouth is the arc where the
 * disc stops. Of straight-sided tips those sharper than about 31 degrees count, blunter ones are corners; a stroke
 * counts as soon as it is longer than wide.
 * </ul>
 * and in any case only if it is deeper than the tolerance.
 */
public final class LocalThickness {

	private LocalThickness() {
	}

	/**
	 * The parts of a region thinner than {@code width}, the thinnest first. A part is reported, and its thickness is
	 * right, to within the tolerance.
	 *
	 * @param width in mm, positive
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static List<ThinPlace> thinnerThan(Region region, double width, Tolerance tolerance, Monitor monitor) {
		List<ThinPlace> places = new ArrayList<>();
		ThinParts parts = new ThinParts(tolerance.mm());
		Map<Likeness, Found> known = new HashMap<>();
		int done = 0;
		for (Piece piece : region.pieces()) {
			Found found = known.computeIfAbsent(Likeness.of(piece),
					first -> new Found(piece.outer().start(), thinPlaces(piece, width, parts, tolerance, monitor)));
			Point shift = piece.outer().start().minus(found.origin);
			for (ThinPlace place : found.places) {
				places.add(new ThinPlace(place.place().plus(shift), place.thickness(), place.area()));
			}
			monitor.worked((double) ++done / region.pieces().size());
		}
		places.sort(Comparator.comparingDouble(ThinPlace::thickness).thenComparingDouble(p -> p.place().y())
				.thenComparingDouble(p -> p.place().x()));
		return places;
	}

	/** What was found in the first of several pieces that are alike. */
	private record Found(Point origin, List<ThinPlace> places) {
	}

	private static List<ThinPlace> thinPlaces(Piece piece, double width, ThinParts parts, Tolerance tolerance,
			Monitor monitor) {
		List<ThinPlace> places = new ArrayList<>();
		Polygon polygon = Polygons.of(piece, parts.flatteningDeviation());
		for (Geometry part : parts.of(polygon, width)) {
			monitor.check();
			ThinPlace place = new Bottleneck(polygon, parts, tolerance.mm()).of(part, width);
			// a tip just about deeper than wide at this width, and at no smaller one, is a corner after all
			if (place.thickness() < width) {
				places.add(place);
			}
		}
		return places;
	}

	/**
	 * The thinnest place of a region: the greatest width that nothing is thinner than. Empty for an empty region.
	 */
	public static Optional<ThinPlace> thinnest(Region region, Tolerance tolerance, Monitor monitor) {
		ThinParts parts = new ThinParts(tolerance.mm());
		ThinPlace thinnest = null;
		for (Piece piece : region.pieces()) {
			monitor.check();
			Polygon polygon = Polygons.of(piece, parts.flatteningDeviation());
			// no disc wider than the largest inscribed one fits anywhere, so the whole piece is thinner
			double width = 2 * MaximumInscribedCircle.getRadiusLine(polygon, tolerance.mm() / 8).getLength()
					+ tolerance.mm();
			if (thinnest != null) {
				width = Math.min(width, thinnest.thickness());
			}
			for (Geometry part : parts.of(polygon, width)) {
				ThinPlace place = new Bottleneck(polygon, parts, tolerance.mm()).of(part, width);
				if (thinnest == null || place.thickness() < thinnest.thickness()) {
					thinnest = place;
				}
			}
		}
		return Optional.ofNullable(thinnest);
	}
}
