package org.frisket.geometry;

import java.util.ArrayList;
import java.util.List;

/** One connected part of a region: an outer contour and the holes in it. */
public record Piece(Contour outer, List<Contour> holes) {

	public Piece {
		holes = List.copyOf(holes);
	}

	/** The outer contour first. */
	public List<Contour> contours() {
		List<Contour> all = new ArrayList<>(holes.size() + 1);
		all.add(outer);
		all.addAll(holes);
		return all;
	}

	/** Area in mm², without the holes. */
	public double area() {
		return Math.abs(outer.signedArea()) - holes.stream().mapToDouble(h -> Math.abs(h.signedArea())).sum();
	}

	public Bounds bounds() {
		return outer.bounds();
	}
}
