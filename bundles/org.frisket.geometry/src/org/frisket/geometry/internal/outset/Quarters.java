package org.frisket.geometry.internal.outset;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;

/**
 * Pieces sorted into ever smaller halves of the plane, split across and along by turns at places that do not depend on
 * the pieces: while one is another than before, all halves without it hold what they held.
 *
 * @param top  of the stretch of the plane that they are in, in mm
 * @param left of it
 * @param size of its longer side; after every second split it is twice as wide as high
 * @param rows whether it is split into an upper and a lower half next
 */
public record Quarters(List<Piece> pieces, double left, double top, double size, boolean rows) {

	/** A square about the origin with sides of a power of two, large enough for most work on paper. */
	private static final double LEAST = 4096;
	/** Pieces with their middles so near to each other are told apart by their order, in mm. */
	private static final double FINEST = 1e-3;

	/** All pieces of a region, at least one. */
	public Quarters(List<Piece> pieces) {
		this(pieces, -reach(pieces), -reach(pieces), 2 * reach(pieces), true);
	}

	private static double reach(List<Piece> pieces) {
		double reach = LEAST;
		for (Piece piece : pieces) {
			Bounds box = piece.bounds();
			double farthest = Math.max(Math.max(-box.minX(), box.maxX()), Math.max(-box.minY(), box.maxY()));
			while (reach < farthest) {
				reach *= 2;
			}
		}
		return reach;
	}

	/** At least two pieces parted into two, neither of them without any. */
	public List<Quarters> parted() {
		Quarters part = this;
		while (part.size >= FINEST) {
			Quarters first = part.half(false);
			Quarters second = part.half(true);
			if (!first.pieces.isEmpty() && !second.pieces.isEmpty()) {
				return List.of(first, second);
			}
			part = first.pieces.isEmpty() ? second : first;
		}
		int middle = pieces.size() / 2;
		return List.of(part.of(pieces.subList(0, middle)), part.of(pieces.subList(middle, pieces.size())));
	}

	private Quarters half(boolean second) {
		double middle = (rows ? top : left) + size / 2;
		List<Piece> held = new ArrayList<>();
		for (Piece piece : pieces) {
			Point centre = piece.bounds().centre();
			if ((rows ? centre.y() : centre.x()) >= middle == second) {
				held.add(piece);
			}
		}
		return new Quarters(held, !rows && second ? middle : left, rows && second ? middle : top, rows ? size : size / 2,
				!rows);
	}

	private Quarters of(List<Piece> some) {
		return new Quarters(List.copyOf(some), left, top, size, rows);
	}
}
