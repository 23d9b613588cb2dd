package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Region;
import org.frisket.geometry.internal.CanonicalOrder;

/** Gives each hole to the outer contour around it. */
public final class PieceAssembler {

	private PieceAssembler() {
	}

	/** Pieces of contours that do not meet, in order; nothing if they do not lie in each other as a region's must. */
	public static Optional<List<Piece>> assembled(List<Contour> contours, Monitor monitor) {
		return assemble(contours.stream().map(contour -> new Ring(contour, 0)).toList(), monitor);
	}

	/** The region without holes, and without what lies in them. */
	public static Region filled(Region region, Monitor monitor) {
		Nesting nesting = new Nesting(region.pieces().stream().map(piece -> new Ring(piece.outer(), 0)).toList(),
				monitor);
		List<Piece> outermost = new ArrayList<>();
		for (int i = 0; i < nesting.rings.size(); i++) {
			if (nesting.parent(i) < 0) {
				outermost.add(new Piece(nesting.rings.get(i).contour, List.of()));
			}
		}
		return new Region(CanonicalOrder.sorted(outermost));
	}

	/** Nothing if the rings do not lie in each other as outer contours and holes must. */
	static Optional<List<Piece>> assemble(List<Ring> unordered, Monitor monitor) {
		return assemble(new Nesting(unordered, monitor));
	}

	static Optional<List<Piece>> assemble(Nesting nesting) {
		List<Ring> rings = nesting.rings;
		List<List<Contour>> holes = new ArrayList<>(rings.size());
		for (int i = 0; i < rings.size(); i++) {
			int parent = nesting.parent(i);
			boolean inOuter = parent >= 0 && rings.get(parent).isOuter();
			if (rings.get(i).isOuter() == inOuter) {
				return Optional.empty();
			}
			holes.add(new ArrayList<>());
			if (inOuter) {
				holes.get(parent).add(rings.get(i).contour);
			}
		}
		List<Piece> pieces = new ArrayList<>();
		for (int i = 0; i < rings.size(); i++) {
			if (rings.get(i).isOuter()) {
				pieces.add(new Piece(rings.get(i).contour, holes.get(i)));
			}
		}
		return Optional.of(CanonicalOrder.sorted(pieces));
	}
}
