package org.frisket.typography;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;

/**
 * A text set in a face: letters at their places, in mm. The first baseline lies at y = 0, the left end of the widest
 * line at x = 0.
 *
 * @param letters those that leave a mark, line by line, each line from left to right; blanks are not among them
 * @param missing what could not be set, in the order of the text
 * @param lines   all lines, empty ones too
 * @param spans   parts that are set otherwise, in the order of the text
 */
public record SetText(String text, FontFace face, Setting setting, List<Letter> letters, List<MissingGlyph> missing,
		List<TextLine> lines, List<TextSpan> spans) {

	public SetText {
		letters = List.copyOf(letters);
		missing = List.copyOf(missing);
		lines = List.copyOf(lines);
		spans = List.copyOf(spans);
	}

	/** The same text with its letters elsewhere. */
	public SetText withLetters(List<Letter> moved) {
		return new SetText(text, face, setting, moved, missing, lines, spans);
	}

	/** The face a letter is set in. */
	public FontFace faceOf(Letter letter) {
		return letter.span() < 0 ? face : spans.get(letter.span()).face().orElse(face);
	}

	/** Height of a capital H in mm, but for spans of their own. */
	public double capHeight() {
		return setting.capHeight();
	}

	/** mm for a font unit, but for spans of their own. */
	public double scale() {
		return setting.capHeight() / face.capHeight();
	}

	/** All letters together. */
	public Outline outline() {
		List<Contour> contours = new ArrayList<>();
		for (Letter letter : letters) {
			contours.addAll(letter.outline().contours());
		}
		return new Outline(contours);
	}

	/** Of the outlines, not of the advances. */
	public Bounds bounds() {
		return letters.stream().map(l -> l.outline().bounds()).reduce(Bounds.EMPTY, Bounds::with);
	}

	/** The characters a letter stands for. */
	public String characters(Letter letter) {
		return text.substring(letter.start(), letter.end());
	}
}
