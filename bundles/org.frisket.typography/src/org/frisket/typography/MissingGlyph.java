package org.frisket.typography;

/**
 * A character that could not be set because the font lacks it, or because it is half of a surrogate pair.
 *
 * @param index of the character (UTF-16) in the text
 */
public record MissingGlyph(int codePoint, int index) {

	/** The character and its number, such as {@code 'é' (U+00E9)}; the number alone if there is nothing to see. */
	public String label() {
		String number = String.format("U+%04X", codePoint);
		return Character.getType(codePoint) == Character.SURROGATE || Character.isISOControl(codePoint) ? number
				: "'" + Character.toString(codePoint) + "' (" + number + ")";
	}
}
