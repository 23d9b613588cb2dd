package org.frisket.typography;

import java.util.List;

import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/**
 * The smallest part of set text that may be moved by itself: one character, or several that became one (a ligature, a
 * letter with its accents). Lengths are mm.
 *
 * @param start   index of the first character (UTF-16) in the text
 * @param end     index after the last one
 * @param line    number of the line, from 0
 * @param word    number of the word in its line, from 0; words are parted by blanks
 * @param glyphs  glyph numbers, the base before its accents
 * @param outline at its final place, never empty
 * @param origin  pen position on the baseline before the letter
 * @param advance width in the line, without tracking
 * @param span    number of the text's span it belongs to, -1 for none
 */
public record Letter(int start, int end, int line, int word, List<Integer> glyphs, Outline outline, Point origin,
		double advance, int span) {

	public Letter {
		glyphs = List.copyOf(glyphs);
	}

	/** The same letter elsewhere. */
	public Letter movedBy(double dx, double dy) {
		return dx == 0 && dy == 0 ? this : transformed(Transform.translation(dx, dy));
	}

	/** The same letter moved, turned or scaled; the advance stays what it was in the line. */
	public Letter transformed(Transform transform) {
		return new Letter(start, end, line, word, glyphs, outline.transformed(transform), transform.apply(origin),
				advance, span);
	}
}
