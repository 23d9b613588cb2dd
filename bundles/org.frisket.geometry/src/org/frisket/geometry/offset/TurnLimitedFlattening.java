package org.frisket.geometry.offset;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Flattening for offsets without arcs: no vertex of a flattened curve turns so much that its bevel at the offset
 * distance would stand off the arc by more than the deviation. Next to a corner the chords shorten until
 * their direction
 * is practically the tangent.
 */
final class TurnLimitedFlattening {

	private static final int HALVINGS = 14;

	private final double deviation;
	private final double largestTurn;
	private final double turnAtCorner;

	TurnLimitedFlattening(double deviation, double distance) {
		this.deviation = deviation;
		// a bevel across a turn of a stands off its arc of radius d by d a^2 / 8
		largestTurn = Math.min(0.5, Math.sqrt(8 * deviation / distance));
		turnAtCorner = Math.min(largestTurn, 2 * deviation / distance);
	}

	/** Whether a turn, in radians, passes for part of a curve. */
	boolean isSmooth(double turn) {
		return turn <= largestTurn;
	}

	Geometry of(Region region) {
		return Polygons.factory().createMultiPolygon(region.pieces().stream().map(this::of).toArray(Polygon[]::new));
	}

	private Polygon of(Piece piece) {
		return Polygons.factory().createPolygon(ring(piece.outer()),
				piece.holes().stream().map(this::ring).toArray(LinearRing[]::new));
	}

	private LinearRing ring(Contour contour) {
		List<Coordinate> coordinates = new ArrayList<>();
		for (Segment segment : contour.segments()) {
			double[] last = { 0 };
			add(coordinates, segment.start());
			segment.flatten(deviation, t -> {
				split(segment, last[0], t, coordinates, 0);
				last[0] = t;
			});
			coordinates.remove(coordinates.size() - 1);
		}
		coordinates.add(coordinates.get(0).copy());
		return coordinates.size() < 4 ? Polygons.ring(contour, deviation)
				: Polygons.factory().createLinearRing(coordinates.toArray(Coordinate[]::new));
	}

	/** Adds the points after {@code from} up to {@code to}. */
	private void split(Segment segment, double from, double to, List<Coordinate> coordinates, int depth) {
		Point leaving = from == 0 ? segment.startTangent() : segment.derivative(from);
		Point arriving = to == 1 ? segment.endTangent() : segment.derivative(to);
		double turn = Math.abs(Math.atan2(leaving.cross(arriving), leaving.dot(arriving)));
		if (turn > (from == 0 || to == 1 ? turnAtCorner : largestTurn) && depth < HALVINGS) {
			double middle = (from + to) / 2;
			split(segment, from, middle, coordinates, depth + 1);
			split(segment, middle, to, coordinates, depth + 1);
		} else {
			add(coordinates, segment.at(to));
		}
	}

	private static void add(List<Coordinate> coordinates, Point point) {
		Coordinate coordinate = new Coordinate(point.x(), point.y());
		if (coordinates.isEmpty() || !coordinates.get(coordinates.size() - 1).equals2D(coordinate)) {
			coordinates.add(coordinate);
		}
	}
}
