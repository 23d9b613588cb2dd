package org.frisket.geometry.axis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Segment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Points along the boundary of a piece that know their neighbours. */
final class BoundarySamples {

	/** How far chords between samples stray from the curve, as a part of the spacing. */
	private static final double DEVIATION = 1.0 / 16;
	private static final int SMALLEST_RING = 3;

	private record Position(int contour, int index) {
	}

	private final List<List<Coordinate>> rings = new ArrayList<>();
	private final Map<Coordinate, Position> positions = new HashMap<>();

	/** @param spacing the largest distance of neighbours in mm */
	BoundarySamples(Piece piece, double spacing) {
		for (Contour contour : piece.contours()) {
			add(contour, spacing);
		}
	}

	private void add(Contour contour, double spacing) {
		List<Coordinate> ring = new ArrayList<>();
		for (Segment segment : contour.segments()) {
			double[] from = { 0 };
			segment.flatten(spacing * DEVIATION, t -> {
				double chord = segment.at(from[0]).distance(segment.at(t));
				int steps = Math.max(1, (int) Math.ceil(chord / spacing));
				for (int i = 0; i < steps; i++) {
					add(segment.at(from[0] + (t - from[0]) * i / steps), ring);
				}
				from[0] = t;
			});
		}
		rings.add(ring);
	}

	private void add(Point point, List<Coordinate> ring) {
		Coordinate coordinate = new Coordinate(point.x(), point.y());
		if (positions.putIfAbsent(coordinate, new Position(rings.size(), ring.size())) == null) {
			ring.add(coordinate);
		}
	}

	List<Coordinate> all() {
		return rings.stream().flatMap(List::stream).toList();
	}

	/** The piece as the samples draw it. */
	Polygon polygon() {
		LinearRing[] linear = rings.stream().map(BoundarySamples::ring).toArray(LinearRing[]::new);
		LinearRing[] holes = new LinearRing[linear.length - 1];
		System.arraycopy(linear, 1, holes, 0, holes.length);
		return Polygons.factory().createPolygon(linear[0], holes);
	}

	private static LinearRing ring(List<Coordinate> samples) {
		List<Coordinate> closed = new ArrayList<>(samples);
		closed.add(samples.get(0));
		return Polygons.factory()
				.createLinearRing(samples.size() < SMALLEST_RING ? new Coordinate[0] : closed.toArray(Coordinate[]::new));
	}

	/** Whether one follows the other on the boundary. */
	boolean areNeighbours(Coordinate a, Coordinate b) {
		Position one = positions.get(a);
		Position other = positions.get(b);
		if (one.contour != other.contour) {
			return false;
		}
		int apart = Math.abs(one.index - other.index);
		return apart == 1 || apart == rings.get(one.contour).size() - 1;
	}
}
