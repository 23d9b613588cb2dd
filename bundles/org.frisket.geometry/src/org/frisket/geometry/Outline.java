package org.frisket.geometry;

import java.util.ArrayList;
import java.util.List;

/** Contours as they came from a font, a file or a hand: they may cross, overlap, stay open or run either way. */
public record Outline(List<Contour> contours) {

	public static final Outline EMPTY = new Outline(List.of());

	public Outline {
		contours = List.copyOf(contours);
	}

	public static Outline of(Contour... contours) {
		return new Outline(List.of(contours));
	}

	public boolean isEmpty() {
		return contours.isEmpty();
	}

	public Outline plus(Outline other) {
		List<Contour> all = new ArrayList<>(contours);
		all.addAll(other.contours);
		return new Outline(all);
	}

	public Outline transformed(Transform transform) {
		List<Contour> moved = new ArrayList<>(contours.size());
		for (Contour contour : contours) {
			moved.add(contour.transformed(transform));
		}
		return new Outline(moved);
	}

	public Bounds bounds() {
		Bounds all = Bounds.EMPTY;
		for (Contour contour : contours) {
			all = all.with(contour.bounds());
		}
		return all;
	}

	public int nodeCount() {
		int count = 0;
		for (Contour contour : contours) {
			count += contour.nodeCount();
		}
		return count;
	}
}
