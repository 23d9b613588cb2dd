package org.frisket.impose.shape;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/**
 * Parts a polygon, with or without holes, into few convex ones that cover it exactly: triangles are joined over every
 * diagonal that convexity does not need, which leaves at most four times as many as the best parting has (Hertel and
 * Mehlhorn, Fast triangulation of simple polygons, 1983; from memory).
 */
final class Parting {

	/** Of the product of two edges' lengths: how far round a corner may turn the wrong way and still be straight. */
	private static final double STRAIGHT = 1e-12;

	private record Side(Coordinate from, Coordinate to) {
	}

	private final Map<Side, List<Coordinate>> owner = new HashMap<>();

	private Parting() {
	}

	static List<Convex> of(Polygon polygon) {
		Parting parting = new Parting();
		Geometry triangles = ConstrainedDelaunayTriangulator.triangulate(polygon);
		List<List<Coordinate>> rings = new ArrayList<>();
		for (int i = 0; i < triangles.getNumGeometries(); i++) {
			List<Coordinate> ring = ring(triangles.getGeometryN(i).getCoordinates());
			if (ring != null) {
				rings.add(ring);
			}
		}
		rings.forEach(parting::own);
		List<Side> sides = new ArrayList<>();
		for (List<Coordinate> ring : rings) {
			for (int i = 0; i < ring.size(); i++) {
				sides.add(new Side(ring.get(i), ring.get((i + 1) % ring.size())));
			}
		}
		// the longest diagonals first: what is left is rounder
		sides.sort((a, b) -> Double.compare(b.from().distance(b.to()), a.from().distance(a.to())));
		sides.forEach(parting::join);
		List<Convex> pieces = new ArrayList<>();
		for (List<Coordinate> ring : rings) {
			if (parting.owner.get(new Side(ring.get(0), ring.get(1))) == ring) {
				pieces.add(convex(ring));
			}
		}
		return pieces;
	}

	/** A triangle's corners, counter-clockwise; null for one without area. */
	private static List<Coordinate> ring(Coordinate[] c) {
		double area = cross(c[0], c[1], c[2]);
		if (area == 0) {
			return null;
		}
		return new ArrayList<>(area > 0 ? List.of(c[0], c[1], c[2]) : List.of(c[0], c[2], c[1]));
	}

	private void own(List<Coordinate> ring) {
		for (int i = 0; i < ring.size(); i++) {
			owner.put(new Side(ring.get(i), ring.get((i + 1) % ring.size())), ring);
		}
	}

	private void join(Side side) {
		List<Coordinate> a = owner.get(side);
		List<Coordinate> b = owner.get(new Side(side.to(), side.from()));
		if (a == null || b == null || a == b) {
			return;
		}
		int i = a.indexOf(side.from());
		int j = b.indexOf(side.to());
		Coordinate beforeFrom = a.get((i + a.size() - 1) % a.size());
		Coordinate afterTo = a.get((i + 2) % a.size());
		Coordinate afterFrom = b.get((j + 2) % b.size());
		Coordinate beforeTo = b.get((j + b.size() - 1) % b.size());
		if (!convex(beforeFrom, side.from(), afterFrom) || !convex(beforeTo, side.to(), afterTo)) {
			return;
		}
		List<Coordinate> joined = new ArrayList<>();
		for (int k = 1; k <= a.size(); k++) {
			joined.add(a.get((i + k) % a.size()));
		}
		for (int k = 2; k < b.size(); k++) {
			joined.add(b.get((j + k) % b.size()));
		}
		owner.remove(side);
		owner.remove(new Side(side.to(), side.from()));
		a.clear();
		a.addAll(joined);
		own(a);
	}

	private static boolean convex(Coordinate a, Coordinate b, Coordinate c) {
		return cross(a, b, c) >= -STRAIGHT * a.distance(b) * b.distance(c);
	}

	private static double cross(Coordinate a, Coordinate b, Coordinate c) {
		return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
	}

	private static Convex convex(List<Coordinate> ring) {
		return new Convex(ring.stream().mapToDouble(c -> c.x).toArray(), ring.stream().mapToDouble(c -> c.y).toArray());
	}
}
