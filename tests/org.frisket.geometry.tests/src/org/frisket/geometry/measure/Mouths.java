package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Polygons;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** The stretches of a part's boundary that are not boundary of the whole: where it opens into the rest. */
final class Mouths {

	private final List<Double> lengths = new ArrayList<>();

	private Mouths() {
	}

	/** @param slack how near to the outline of the whole, in mm, a point is taken to lie on it */
	static Mouths of(Polygon part, IndexedFacetDistance toOutline, double slack) {
		Mouths mouths = new Mouths();
		mouths.add(part.getExteriorRing(), toOutline, slack);
		for (int i = 0; i < part.getNumInteriorRing(); i++) {
			mouths.add(part.getInteriorRingN(i), toOutline, slack);
		}
		return mouths;
	}

	/** How many are wider than a limit in mm. */
	int count(double limit) {
		return (int) lengths.stream().filter(l -> l > limit).count();
	}

	double widest() {
		return lengths.stream().mapToDouble(l -> l).max().orElse(0);
	}

	private void add(LinearRing ring, IndexedFacetDistance toOutline, double slack) {
		Coordinate[] corners = ring.getCoordinates();
		int edges = corners.length - 1;
		boolean[] open = new boolean[edges];
		int start = -1;
		for (int i = 0; i < edges; i++) {
			Coordinate middle = LineSegment.midPoint(corners[i], corners[i + 1]);
			open[i] = toOutline.distance(Polygons.factory().createPoint(middle)) > slack;
			if (!open[i]) {
				start = i;
			}
		}
		double length = 0;
		// from an edge on the outline once round, so that no mouth is cut in two
		for (int k = 1; k <= edges; k++) {
			int i = (start + k + edges) % edges;
			if (open[i]) {
				length += corners[i].distance(corners[i + 1]);
			}
			if (length > 0 && (!open[i] || k == edges)) {
				lengths.add(length);
				length = 0;
			}
		}
	}
}
