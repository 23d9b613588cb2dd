package org.frisket.typography.index;

import java.lang.Character.UnicodeScript;
import java.util.Optional;

/**
 * What is asked of fonts; all of it must hold.
 *
 * @param words      each must occur in one of the font's names; accents and capitals make no difference
 * @param leastWeight 1 to 1000
 * @param mostWeight  1 to 1000
 * @param italic     whether it is to be slanted, if that matters
 * @param script     that it can set, if that matters
 * @param characters every one of which must have a glyph
 */
public record FontQuery(String words, int leastWeight, int mostWeight, Optional<Boolean> italic,
		Optional<UnicodeScript> script, String characters) {

	public static final FontQuery ALL = new FontQuery("", 1, 1000, Optional.empty(), Optional.empty(), "");

	public static FontQuery named(String words) {
		return new FontQuery(words, 1, 1000, Optional.empty(), Optional.empty(), "");
	}

	public FontQuery withWeights(int least, int most) {
		return new FontQuery(words, least, most, italic, script, characters);
	}

	public FontQuery withItalic(boolean slanted) {
		return new FontQuery(words, leastWeight, mostWeight, Optional.of(slanted), script, characters);
	}

	public FontQuery withScript(UnicodeScript wanted) {
		return new FontQuery(words, leastWeight, mostWeight, italic, Optional.of(wanted), characters);
	}

	public FontQuery withCharacters(String text) {
		return new FontQuery(words, leastWeight, mostWeight, italic, script, text);
	}
}
