package org.frisket.geometry.measure;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;

/**
 * What decides whether a piece can be cut. Places are relative to where its outer contour starts.
 *
 * @param thinnest        its narrowest place; see {@link StrokeWidths#thinnest(Tolerance)}
 * @param growing         its narrowest place, seen with a tolerance that is a share of the width
 * @param smallestCounter the diameter in mm of the largest disc in that of its holes where it is smallest, and the middle
 *                        of the hole
 * @param length          of the long side of the smallest box that holds it, in mm
 */
public record PieceMeasures(StrokeWidths.Width thinnest, StrokeWidths.Width growing,
		Optional<StrokeWidths.Width> smallestCounter, double length) {

	/**
	 * How a piece is looked at.
	 *
	 * @param tolerance of all values
	 * @param thin      with which strokes and corners are told apart
	 * @param from      the least width in mm that matters for {@code growing}
	 * @param share     of the width, for {@code growing}
	 */
	public record Looking(Tolerance tolerance, Tolerance thin, double from, double share) {
	}

	/** @param memory of pieces that are the same but for their place */
	public static PieceMeasures of(Piece piece, Looking looking, Memory memory, Monitor monitor) {
		record Key(Likeness piece, Looking looking) {
		}
		return memory.get(new Key(Likeness.of(piece), looking), () -> measured(piece, looking, monitor));
	}

	private static PieceMeasures measured(Piece anywhere, Looking looking, Monitor monitor) {
		Point origin = anywhere.outer().start();
		Piece piece = new Region(List.of(anywhere)).transformed(Transform.translation(-origin.x(), -origin.y())).pieces()
				.get(0);
		StrokeWidths strokes = StrokeWidths.of(piece, looking.tolerance(), monitor);
		StrokeWidths.Width counter = null;
		for (Contour hole : piece.holes()) {
			double width = StrokeWidths.of(new Piece(hole.reversed(), List.of()), looking.tolerance(), monitor).widest();
			if (counter == null || width < counter.mm()) {
				counter = new StrokeWidths.Width(width, hole.bounds().centre());
			}
		}
		return new PieceMeasures(strokes.thinnest(looking.thin()), strokes.thinnest(looking.from(), looking.share()),
				Optional.ofNullable(counter), Measures.smallestBox(piece, looking.tolerance()).wide());
	}
}
