package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The second way to what {@link StrokeWidths} measures, by which that is checked: by opening the region instead of along
 * its boundary. Slower, and no part of the product.
 * <p>
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
		Map<Object, Object> known = new HashMap<>();
		return thinnerThan(region, width, tolerance, new Memory() {
			@Override
			@SuppressWarnings("unchecked")
			public <R> R get(Object key, Supplier<R> computation) {
				return (R) known.computeIfAbsent(key, first -> computation.get());
			}
		}, monitor);
	}

	/** @param memory of pieces that may be alike, in this region or in others; see the other method for the rest */
	public static List<ThinPlace> thinnerThan(Region region, double width, Tolerance tolerance, Memory memory,
			Monitor monitor) {
		record Key(Likeness piece, double width, Tolerance tolerance) {
		}
		List<ThinPlace> places = new ArrayList<>();
		ThinParts parts = new ThinParts(tolerance.mm());
		int done = 0;
		for (Piece piece : region.pieces()) {
			monitor.check();
			Point origin = piece.outer().start();
			List<ThinPlace> found = memory.get(new Key(Likeness.of(piece), width, tolerance),
					() -> thinPlaces(placed(piece, Point.ORIGIN.minus(origin)), width, parts, tolerance, monitor));
			for (ThinPlace place : found) {
				places.add(new ThinPlace(place.place().plus(origin), place.thickness(), place.area()));
			}
			monitor.worked((double) ++done / region.pieces().size());
		}
		places.sort(Comparator.comparingDouble(ThinPlace::thickness).thenComparingDouble(p -> p.place().y())
				.thenComparingDouble(p -> p.place().x()));
		return places;
	}

	/** Where a piece lies must not show in what is found in those that are alike. */
	private static Piece placed(Piece piece, Point shift) {
		return new Region(List.of(piece)).transformed(Transform.translation(shift.x(), shift.y())).pieces().get(0);
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
