package org.frisket.prepare.internal.checks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;

/** How far places are from contours, as far as a reach, by the chords of the contours in a grid as wide as that. */
final class NearestChord {

	private record Chord(Point from, Point to) {

		double distance(Point place) {
			Point along = to.minus(from);
			double length = along.dot(along);
			double t = length == 0 ? 0 : Math.min(1, Math.max(0, place.minus(from).dot(along) / length));
			return place.distance(from.plus(along.times(t)));
		}
	}

	private record Cell(long column, long row) {
	}

	private final double reach;
	private final Map<Cell, List<Chord>> cells = new HashMap<>();

	/** @param flatness of the chords in mm @param reach in mm, above 0 */
	NearestChord(List<Contour> contours, double flatness, double reach) {
		this.reach = reach;
		for (Contour contour : contours) {
			List<Point> corners = corners(contour, flatness);
			for (int i = 1; i < corners.size(); i++) {
				add(corners.get(i - 1), corners.get(i));
			}
		}
	}

	/** Along a contour, back to its start if it is closed. */
	static List<Point> corners(Contour contour, double flatness) {
		List<Point> corners = new ArrayList<>(contour.flattened(flatness));
		if (contour.isClosed() && !corners.isEmpty()) {
			corners.add(corners.get(0));
		}
		return corners;
	}

	/** In parts no longer than a cell, so that each is in few of them. */
	private void add(Point from, Point to) {
		int parts = Math.max(1, (int) Math.ceil(from.distance(to) / reach));
		for (int i = 0; i < parts; i++) {
			Chord chord = new Chord(from.towards(to, (double) i / parts), from.towards(to, (double) (i + 1) / parts));
			Cell one = cell(chord.from());
			Cell other = cell(chord.to());
			long right = Math.max(one.column(), other.column());
			long lowest = Math.max(one.row(), other.row());
			for (long column = Math.min(one.column(), other.column()); column <= right; column++) {
				for (long row = Math.min(one.row(), other.row()); row <= lowest; row++) {
					cells.computeIfAbsent(new Cell(column, row), each -> new ArrayList<>()).add(chord);
				}
			}
		}
	}

	private Cell cell(Point place) {
		return new Cell((long) Math.floor(place.x() / reach), (long) Math.floor(place.y() / reach));
	}

	/** In mm; without end beyond the reach. */
	double distance(Point place) {
		Cell middle = cell(place);
		double least = Double.POSITIVE_INFINITY;
		for (long column = middle.column() - 1; column <= middle.column() + 1; column++) {
			for (long row = middle.row() - 1; row <= middle.row() + 1; row++) {
				for (Chord chord : cells.getOrDefault(new Cell(column, row), List.of())) {
					least = Math.min(least, chord.distance(place));
				}
			}
		}
		return least <= reach ? least : Double.POSITIVE_INFINITY;
	}
}
