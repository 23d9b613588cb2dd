package org.frisket.typography.face;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import com.ibm.icu.text.BreakIterator;

/**
 * What a reader takes for one character, accents and all, by UAX #29 as ICU has it: the rules by which lines are broken
 * too. An index counts UTF-16 characters.
 */
public final class Characters {

	private Characters() {
	}

	/** Where the character begins that ends at an index; 0 if there is none. */
	public static int before(String text, int index) {
		int at = index <= 0 ? BreakIterator.DONE : of(text).preceding(index);
		return at == BreakIterator.DONE ? 0 : at;
	}

	/** Where the character ends that an index stands before or in; the text's end if there is none. */
	public static int after(String text, int index) {
		int at = index >= text.length() ? BreakIterator.DONE : of(text).following(index);
		return at == BreakIterator.DONE ? text.length() : at;
	}

	/** Where a caret may stand: before each character and after the last one. */
	public static List<Integer> stops(String text) {
		BreakIterator characters = of(text);
		List<Integer> stops = new ArrayList<>();
		for (int at = characters.first(); at != BreakIterator.DONE; at = characters.next()) {
			stops.add(at);
		}
		return stops;
	}

	private static BreakIterator of(String text) {
		BreakIterator characters = BreakIterator.getCharacterInstance(Locale.ROOT);
		characters.setText(text);
		return characters;
	}
}
