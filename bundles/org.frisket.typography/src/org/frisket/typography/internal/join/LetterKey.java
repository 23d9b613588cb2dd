package org.frisket.typography.internal.join;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.typography.Letter;

/**
 * The shape of a letter wherever it stands.
 *
 * @param models  that its contours are moved copies of
 * @param offsets of the contours from the letter's origin
 */
public record LetterKey(List<Contour> models, List<Point> offsets) {

	/** Equal for letters of one face, size and glyphs, unless an accent stands elsewhere or a letter is turned. */
	public static LetterKey of(Letter letter) {
		List<Contour> models = new ArrayList<>();
		List<Point> offsets = new ArrayList<>();
		for (Contour contour : letter.outline().contours()) {
			models.add(contour.model());
			offsets.add(contour.offsetFrom(letter.origin()));
		}
		return new LetterKey(models, offsets);
	}

	/** The letter with its origin at 0, made of the key alone. */
	public Outline outline() {
		List<Contour> contours = new ArrayList<>();
		for (int i = 0; i < models.size(); i++) {
			contours.add(models.get(i).transformed(Transform.translation(offsets.get(i).x(), offsets.get(i).y())));
		}
		return new Outline(contours);
	}
}
