package org.frisket.benchmarks;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * How far an outset lies from the true one, both ways, by distances from the shape alone: a place of the result is as
 * wrong as its distance from the shape is, and true places are those at the distance straight out from a place of the
 * shape that nothing else of it is nearer to.
 */
final class OutsetError {

	private static final double EXACT = 5e-5;
	private static final int LOOKS = 12;
	/** Where the outset has less room than this, in mm, it may close up: such places are not looked for. */
	private static final double ROOM = 0.1;

	private final IndexedFacetDistance shape;
	private final double distance;
	private final List<Point> truth = new ArrayList<>();

	OutsetError(Region region, double distance) {
		this.distance = distance;
		shape = new IndexedFacetDistance(Polygons.of(region, EXACT).getBoundary());
		for (Contour contour : region.contours()) {
			List<Segment> segments = contour.segments();
			for (int i = 0; i < segments.size(); i++) {
				addTruth(segments.get(i), segments.get((i + 1) % segments.size()));
			}
		}
	}

	private void addTruth(Segment segment, Segment next) {
		for (int i = 1; i < LOOKS; i++) {
			double t = (double) i / LOOKS;
			addTruth(segment.at(t), segment.derivative(t).unit().quarterTurn());
		}
		Point before = segment.endTangent().quarterTurn();
		Point after = next.startTangent().quarterTurn();
		double turn = Math.atan2(before.cross(after), before.dot(after));
		for (int i = 0; turn < 0 && i <= LOOKS; i++) {
			double cosine = Math.cos(turn * i / LOOKS);
			double sine = Math.sin(turn * i / LOOKS);
			addTruth(segment.end(), before.times(cosine).plus(before.quarterTurn().times(sine)));
		}
	}

	private void addTruth(Point foot, Point outwards) {
		Point place = foot.plus(outwards.times(distance));
		if (from(shape, place) >= distance - 2 * EXACT
				&& from(shape, place.plus(outwards.times(ROOM))) >= distance + ROOM - 2 * EXACT) {
			truth.add(place);
		}
	}

	/** In mm. */
	double of(Region outset) {
		double most = 0;
		for (Contour contour : outset.contours()) {
			for (Segment segment : contour.segments()) {
				// a chord is farthest off at its ends and in its middle
				int looks = segment instanceof Line ? 2 : LOOKS;
				for (int i = 0; i < looks; i++) {
					most = Math.max(most, Math.abs(from(shape, segment.at((double) i / looks)) - distance));
				}
			}
		}
		IndexedFacetDistance found = new IndexedFacetDistance(Polygons.of(outset, EXACT).getBoundary());
		for (Point place : truth) {
			most = Math.max(most, from(found, place));
		}
		return most;
	}

	private static double from(IndexedFacetDistance edges, Point place) {
		return edges.distance(Polygons.factory().createPoint(new Coordinate(place.x(), place.y())));
	}
}
