package org.frisket.typography;

import java.util.Locale;

import com.ibm.icu.text.BreakIterator;

/**
 * The words of a text by UAX #29 as ICU has it, with its dictionaries for scripts that are written without blanks. An
 * index counts UTF-16 characters.
 */
public final class WordSteps {

	/** A part of a text, from its first character to before {@code end}. */
	public record Part(int start, int end) {
	}

	private WordSteps() {
	}

	/** Where the word begins that an index stands in or behind; 0 if there is none. */
	public static int before(String text, int index) {
		BreakIterator words = of(text);
		int found = 0;
		int start = words.first();
		for (int end = words.next(); end != BreakIterator.DONE && start < index; end = words.next()) {
			if (isWord(words)) {
				found = start;
			}
			start = end;
		}
		return found;
	}

	/** Where the word ends that an index stands before or in; the text's end if there is none. */
	public static int after(String text, int index) {
		BreakIterator words = of(text);
		words.first();
		for (int end = words.next(); end != BreakIterator.DONE; end = words.next()) {
			if (end > index && isWord(words)) {
				return end;
			}
		}
		return text.length();
	}

	/** The word or the gap that an index stands in or before; nothing at the text's end. */
	public static Part at(String text, int index) {
		if (index >= text.length()) {
			return new Part(text.length(), text.length());
		}
		BreakIterator words = of(text);
		int end = words.following(index);
		return new Part(words.previous(), end);
	}

	/** Whether what ends where the words stand has a letter or a digit; blanks and points have none. */
	private static boolean isWord(BreakIterator words) {
		return words.getRuleStatus() >= BreakIterator.WORD_NONE_LIMIT;
	}

	private static BreakIterator of(String text) {
		BreakIterator words = BreakIterator.getWordInstance(Locale.ROOT);
		words.setText(text);
		return words;
	}
}
