package org.frisket.help;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes a text apart into words as they are compared: small letters without marks. */
final class WordScanner {

	private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");
	private static final Pattern MARKS = Pattern.compile("\\p{M}+");

	private WordScanner() {
	}

	static List<String> words(String text) {
		List<String> words = new ArrayList<>();
		Matcher word = WORD.matcher(plain(text));
		while (word.find()) {
			words.add(word.group());
		}
		return words;
	}

	private static String plain(String text) {
		return MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("").toLowerCase(Locale.ROOT)
				.replace("ß", "ss");
	}
}
