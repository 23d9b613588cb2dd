package org.frisket.geometry.axis;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.Measures;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;

/** A piece that is about as wide as long, such as the dot of an i. */
final class Blot {

	private Blot() {
	}

	/** Its outline halfway in; empty if nothing is left of it there. */
	static Optional<Contour> ring(Piece piece, Tolerance tolerance) {
		double radius = Measures.inscribedRadius(piece, tolerance);
		Region shrunk = Offset.of(new Region(List.of(piece)), -radius / 2, Corners.ROUND, Holes.KEEP, tolerance,
				Monitor.NONE);
		return shrunk.pieces().stream().findFirst().map(Piece::outer);
	}
}
