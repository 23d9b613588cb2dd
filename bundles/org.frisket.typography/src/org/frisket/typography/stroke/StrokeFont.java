package org.frisket.typography.stroke;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A font of single lines.
 *
 * @param name      for people
 * @param glyphs    by what they stand for, nearly always one character
 * @param capHeight of the letter H in font units, or what comes nearest
 * @param notice    an acknowledgement that is to go with the font; may be empty
 */
public record StrokeFont(String name, Map<String, StrokeGlyph> glyphs, double capHeight, String notice) {

	/** @throws IllegalArgumentException unless the cap height is positive and finite */
	public StrokeFont {
		if (!(capHeight > 0) || !Double.isFinite(capHeight)) {
			throw new IllegalArgumentException("a stroke font whose capitals are " + capHeight + " high");
		}
		glyphs = Map.copyOf(new TreeMap<>(glyphs));
	}

	/** All that its glyphs stand for, in order. */
	public List<String> sequences() {
		return glyphs.keySet().stream().sorted().toList();
	}

	/** How many characters (UTF-16) from {@code start} on are one glyph: the most that are; 0 if there is none. */
	public int lengthAt(String text, int start, int end) {
		int longest = 0;
		for (int to = start + 1; to <= Math.min(end, start + LONGEST); to++) {
			if (glyphs.containsKey(text.substring(start, to))) {
				longest = to - start;
			}
		}
		return longest;
	}

	/** Longer sequences than this are not looked for. */
	static final int LONGEST = 8;
}
