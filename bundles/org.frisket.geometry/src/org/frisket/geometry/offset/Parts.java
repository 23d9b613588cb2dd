package org.frisket.geometry.offset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Piece;

/** Pieces parted by straight gaps that run through all of them from side to side, as between words and lines. */
final class Parts {

	private Parts() {
	}

	/**
	 * Parts any two of which lie more than {@code gap} mm from each other, in an order that depends on the pieces alone.
	 */
	static List<List<Piece>> apart(List<Piece> pieces, double gap) {
		List<List<Piece>> columns = cut(pieces, gap, Bounds::minX, Bounds::maxX);
		List<List<Piece>> parts = new ArrayList<>();
		for (List<Piece> column : columns) {
			List<List<Piece>> rows = cut(column, gap, Bounds::minY, Bounds::maxY);
			if (rows.size() == 1) {
				parts.add(column);
			} else {
				rows.forEach(row -> parts.addAll(apart(row, gap)));
			}
		}
		return parts;
	}

	private static List<List<Piece>> cut(List<Piece> pieces, double gap, ToDoubleFunction<Bounds> from,
			ToDoubleFunction<Bounds> to) {
		List<Piece> sorted = new ArrayList<>(pieces);
		sorted.sort(Comparator.comparingDouble(piece -> from.applyAsDouble(piece.bounds())));
		List<List<Piece>> parts = new ArrayList<>();
		double reached = Double.NEGATIVE_INFINITY;
		for (Piece piece : sorted) {
			if (parts.isEmpty() || from.applyAsDouble(piece.bounds()) > reached + gap) {
				parts.add(new ArrayList<>());
			}
			parts.get(parts.size() - 1).add(piece);
			reached = Math.max(reached, to.applyAsDouble(piece.bounds()));
		}
		return parts;
	}
}
