package org.frisket.typography.internal.text;

import java.util.Locale;
import java.util.stream.IntStream;

import com.ibm.icu.text.BreakIterator;

/**
 * Where a line may end: by the Unicode Line Breaking Algorithm (UAX #14) without the habits of any one language, and
 * never within what is seen as one character (UAX #29). Both as ICU has them, which the product brings along: the Java
 * runtime's own go by older rules, and by others from version to version.
 */
public final class LineBreaks {

	private LineBreaks() {
	}

	/** Ascending, the text's end among them; none of an empty text. */
	public static int[] places(String text) {
		BreakIterator lines = BreakIterator.getLineInstance(Locale.ROOT);
		BreakIterator characters = BreakIterator.getCharacterInstance(Locale.ROOT);
		lines.setText(text);
		characters.setText(text);
		IntStream.Builder places = IntStream.builder();
		for (int at = lines.next(); at != BreakIterator.DONE; at = lines.next()) {
			if (at == text.length() || characters.isBoundary(at)) {
				places.add(at);
			}
		}
		return places.build().toArray();
	}
}
