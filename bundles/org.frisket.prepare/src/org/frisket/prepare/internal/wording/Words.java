package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;

/** Which pieces of a united wording belong to which word. */
final class Words {

	/** A piece that hangs on no other piece of its word; {@code letter} is the text it came from. */
	record LoosePiece(String letter, Point place) {
	}

	private Words() {
	}

	/**
	 * Every piece of a word but its largest one, word by word.
	 *
	 * @param wholeWords otherwise only the parts of each letter are to hang together
	 */
	static List<LoosePiece> loosePieces(SetText text, Region region, boolean wholeWords) {
		List<LoosePiece> loose = new ArrayList<>();
		for (List<Letter> word : wholeWords ? words(text) : text.letters().stream().map(List::of).toList()) {
			Map<Piece, Letter> pieces = pieces(word, region);
			Piece body = null;
			for (Piece piece : pieces.keySet()) {
				if (body == null || piece.area() > body.area()) {
					body = piece;
				}
			}
			for (Map.Entry<Piece, Letter> entry : pieces.entrySet()) {
				if (entry.getKey() != body) {
					loose.add(new LoosePiece(text.characters(entry.getValue()), entry.getKey().bounds().centre()));
				}
			}
		}
		return loose;
	}

	private static Collection<List<Letter>> words(SetText text) {
		record Place(int line, int word) {
		}
		return text.letters().stream().collect(Collectors.groupingBy(letter -> new Place(letter.line(), letter.word()),
				LinkedHashMap::new, Collectors.toList())).values();
	}

	private static Map<Piece, Letter> pieces(List<Letter> word, Region region) {
		Map<Piece, Letter> found = new LinkedHashMap<>();
		for (Letter letter : word) {
			for (Contour contour : letter.outline().contours()) {
				Piece piece = around(contour.bounds(), region);
				if (piece != null) {
					found.putIfAbsent(piece, letter);
				}
			}
		}
		return found;
	}

	/** The smallest piece whose box holds this box: a contour always lies in the piece it became part of. */
	private static Piece around(Bounds box, Region region) {
		Piece smallest = null;
		double smallestSize = Double.POSITIVE_INFINITY;
		for (Piece piece : region.pieces()) {
			Bounds around = piece.bounds();
			double slack = 1e-3 * (around.width() + around.height());
			double size = around.width() * around.height();
			if (size < smallestSize && around.grown(slack).contains(new Point(box.minX(), box.minY()))
					&& around.grown(slack).contains(new Point(box.maxX(), box.maxY()))) {
				smallest = piece;
				smallestSize = size;
			}
		}
		return smallest;
	}
}
