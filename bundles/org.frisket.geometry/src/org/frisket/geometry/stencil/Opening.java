package org.frisket.geometry.stencil;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;

/** A piece that is cut out of the sheet, as chords. */
final class Opening {

	private final List<List<Point>> rings = new ArrayList<>();

	Opening(Piece piece, double deviation) {
		for (Contour contour : piece.contours()) {
			rings.add(contour.flattened(deviation));
		}
	}

	/** Distances along a ray at which it crosses the edge, the nearest first. */
	List<Double> crossings(Point from, Point along) {
		List<Double> met = new ArrayList<>();
		rings.forEach(ring -> cross(ring, from, along, met));
		Collections.sort(met);
		return met;
	}

	boolean holds(Point point) {
		return crossings(point, new Point(1, 0)).size() % 2 != 0;
	}

	static void cross(List<Point> ring, Point from, Point along, List<Double> met) {
		for (int i = 0; i < ring.size(); i++) {
			Point a = ring.get(i).minus(from);
			Point b = ring.get((i + 1) % ring.size()).minus(from);
			double sideA = along.cross(a);
			double sideB = along.cross(b);
			// a corner counts with the edge that leaves to one side only, so that no crossing is met twice
			if (sideA > 0 != sideB > 0) {
				double distance = a.dot(along) + (b.dot(along) - a.dot(along)) * sideA / (sideA - sideB);
				if (distance > 0) {
					met.add(distance);
				}
			}
		}
	}
}
