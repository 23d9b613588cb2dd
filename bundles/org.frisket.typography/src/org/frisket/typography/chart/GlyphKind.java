package org.frisket.typography.chart;

import java.lang.Character.UnicodeBlock;
import java.util.Set;

/** What a glyph is for, as far as its characters (Unicode general categories) or its name tell. */
public enum GlyphKind {
	CAPITAL, SMALL, LETTER, FIGURE, PUNCTUATION, SYMBOL, ORNAMENT, MARK, BLANK,
	/** Several letters in one, without a character. */
	LIGATURE,
	/** Another form of a glyph, without a character. */
	ALTERNATE,
	/** Neither character nor telling name. */
	OTHER;

	private static final Set<UnicodeBlock> ORNAMENTS = Set.of(UnicodeBlock.DINGBATS, UnicodeBlock.ORNAMENTAL_DINGBATS,
			UnicodeBlock.PRIVATE_USE_AREA, UnicodeBlock.SUPPLEMENTARY_PRIVATE_USE_AREA_A,
			UnicodeBlock.SUPPLEMENTARY_PRIVATE_USE_AREA_B);

	static GlyphKind of(int codePoint) {
		if (ORNAMENTS.contains(UnicodeBlock.of(codePoint))) {
			return ORNAMENT;
		}
		return switch (Character.getType(codePoint)) {
		case Character.UPPERCASE_LETTER, Character.TITLECASE_LETTER -> CAPITAL;
		case Character.LOWERCASE_LETTER -> SMALL;
		case Character.OTHER_LETTER, Character.MODIFIER_LETTER -> LETTER;
		case Character.DECIMAL_DIGIT_NUMBER, Character.LETTER_NUMBER, Character.OTHER_NUMBER -> FIGURE;
		case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.COMBINING_SPACING_MARK -> MARK;
		case Character.SPACE_SEPARATOR, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.CONTROL,
				Character.FORMAT -> BLANK;
		case Character.CONNECTOR_PUNCTUATION, Character.DASH_PUNCTUATION, Character.START_PUNCTUATION,
				Character.END_PUNCTUATION, Character.INITIAL_QUOTE_PUNCTUATION, Character.FINAL_QUOTE_PUNCTUATION,
				Character.OTHER_PUNCTUATION -> PUNCTUATION;
		default -> SYMBOL;
		};
	}

	/**
	 * Of a glyph without a character, by the usual way of naming: parts of a ligature are joined by {@code _}, a
	 * suffix after a stop tells of another form.
	 */
	static GlyphKind of(String name) {
		int stop = name.indexOf('.');
		String stem = stop > 0 ? name.substring(0, stop) : name;
		if (stem.indexOf('_') > 0) {
			return LIGATURE;
		}
		if (stem.matches("orn(m|ament)?\\d*|fleuron\\d*")) {
			return ORNAMENT;
		}
		return stop > 0 && stop < name.length() - 1 ? ALTERNATE : OTHER;
	}
}
