package org.frisket.typography.stroke;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.typography.Letter;
import org.frisket.typography.MissingGlyph;
import org.frisket.typography.Setting;
import org.frisket.typography.TextLine;

/**
 * A text of single lines, in mm, with the frame of {@link org.frisket.typography.SetText}. Its letters can be brought
 * to an arc or a path by {@link org.frisket.typography.layout.ArcLayout#bend} and its like.
 *
 * @param letters with open contours and no glyph numbers
 */
public record StrokeText(String text, StrokeFont font, Setting setting, List<Letter> letters,
		List<MissingGlyph> missing, List<TextLine> lines) {

	public StrokeText {
		letters = List.copyOf(letters);
		missing = List.copyOf(missing);
		lines = List.copyOf(lines);
	}

	/** All strokes together: to be drawn, never cut. */
	public Outline strokes() {
		List<Contour> contours = new ArrayList<>();
		letters.forEach(letter -> contours.addAll(letter.outline().contours()));
		return new Outline(contours);
	}
}
