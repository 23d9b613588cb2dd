package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Where two pieces of a region come nearest to each other; only pairs whose boxes may be nearer are measured. */
public final class NarrowestGap {

	private static final double FLATTENING = 0.25;

	private record Pair(int one, int other, double atLeast) {
	}

	private NarrowestGap() {
	}

	/** @param counts whether the gap between two pieces, given by their numbers, is one */
	public static Optional<StrokeWidths.Width> of(Region region, BiPredicate<Integer, Integer> counts,
			Tolerance tolerance, Monitor monitor) {
		List<Piece> pieces = region.pieces();
		List<Pair> pairs = new ArrayList<>();
		for (int i = 0; i < pieces.size(); i++) {
			for (int k = i + 1; k < pieces.size(); k++) {
				pairs.add(new Pair(i, k, distance(pieces.get(i).bounds(), pieces.get(k).bounds())));
			}
		}
		pairs.sort(Comparator.comparingDouble(Pair::atLeast));
		Polygon[] polygons = new Polygon[pieces.size()];
		IndexedFacetDistance[] facets = new IndexedFacetDistance[pieces.size()];
		StrokeWidths.Width narrowest = null;
		for (Pair pair : pairs) {
			if (narrowest != null && pair.atLeast() >= narrowest.mm()) {
				break;
			}
			if (!counts.test(pair.one(), pair.other())) {
				continue;
			}
			monitor.check();
			for (int i : new int[] { pair.one(), pair.other() }) {
				if (polygons[i] == null) {
					polygons[i] = Polygons.of(pieces.get(i), tolerance.mm() * FLATTENING);
					facets[i] = new IndexedFacetDistance(polygons[i]);
				}
			}
			Coordinate[] nearest = facets[pair.one()].nearestPoints(polygons[pair.other()]);
			double gap = nearest[0].distance(nearest[1]);
			if (narrowest == null || gap < narrowest.mm()) {
				narrowest = new StrokeWidths.Width(gap,
						new Point((nearest[0].x + nearest[1].x) / 2, (nearest[0].y + nearest[1].y) / 2));
			}
		}
		return Optional.ofNullable(narrowest);
	}

	private static double distance(Bounds a, Bounds b) {
		double dx = Math.max(0, Math.max(b.minX() - a.maxX(), a.minX() - b.maxX()));
		double dy = Math.max(0, Math.max(b.minY() - a.maxY(), a.minY() - b.maxY()));
		return Math.hypot(dx, dy);
	}
}
