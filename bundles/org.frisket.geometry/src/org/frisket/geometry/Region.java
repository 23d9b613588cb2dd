package org.frisket.geometry;

import java.util.List;

/**
 * A clean part of the plane. Every contour is closed and simple; no two cross, overlap or share a stretch; outer
 * contours run counter-clockwise to the viewer, holes clockwise; no node is doubled. Pieces stand in a fixed order
 * (by their top-left place), so that equal input gives equal output.
 * <p>
 * Only operations of this bundle make regions; whoever else calls {@link #Region(List)} vouches for all of this.
 */
public record Region(List<Piece> pieces) {

	public static final Region EMPTY = new Region(List.of());

	public Region {
		pieces = List.copyOf(pieces);
	}

	public boolean isEmpty() {
		return pieces.isEmpty();
	}

	/** All contours, each outer one followed by its holes. */
	public List<Contour> contours() {
		return pieces.stream().flatMap(p -> p.contours().stream()).toList();
	}

	public Outline toOutline() {
		return new Outline(contours());
	}

	/** Area in mm². */
	public double area() {
		return pieces.stream().mapToDouble(Piece::area).sum();
	}

	/** Length of all contours in mm. */
	public double perimeter() {
		return contours().stream().mapToDouble(Contour::length).sum();
	}

	public Bounds bounds() {
		return pieces.stream().map(Piece::bounds).reduce(Bounds.EMPTY, Bounds::with);
	}

	public int nodeCount() {
		return contours().stream().mapToInt(Contour::nodeCount).sum();
	}

	/** Moved, turned, scaled; a mirroring map turns the contours round so that the winding stays right. */
	public Region transformed(Transform transform) {
		boolean mirrored = transform.determinant() < 0;
		return new Region(pieces.stream().map(p -> new Piece(turn(p.outer(), transform, mirrored),
				p.holes().stream().map(h -> turn(h, transform, mirrored)).toList())).toList());
	}

	private static Contour turn(Contour contour, Transform transform, boolean mirrored) {
		Contour moved = contour.transformed(transform);
		return mirrored ? moved.reversed() : moved;
	}
}
