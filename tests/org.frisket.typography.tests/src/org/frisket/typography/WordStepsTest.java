package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.typography.WordSteps.Part;
import org.junit.jupiter.api.Test;

class WordStepsTest {

	private static List<String> words(String text) {
		List<String> words = new ArrayList<>();
		for (int at = 0; at < text.length();) {
			int end = WordSteps.after(text, at);
			int start = WordSteps.before(text, end);
			if (start >= at) {
				words.add(text.substring(start, end));
			}
			at = end;
		}
		return words;
	}

	@Test
	void blanksAndPointsAreNoWords() {
		assertEquals(List.of("Harbour", "Lane", "can't", "3,50"), words(" Harbour Lane \u2013 can't: 3,50 \u2026"));
	}

	/** The dictionary of ICU parts them, as nobody sets blanks there. */
	@Test
	void wordsWithoutBlanksArePartedByDictionary() {
		assertEquals(List.of("\u6771\u4eac", "\u3078", "\u884c\u304f"), words("\u6771\u4eac\u3078\u884c\u304f"));
		assertEquals(List.of("\u0e2a\u0e27\u0e31\u0e2a\u0e14\u0e35", "\u0e04\u0e23\u0e31\u0e1a"),
				words("\u0e2a\u0e27\u0e31\u0e2a\u0e14\u0e35\u0e04\u0e23\u0e31\u0e1a"));
	}

	@Test
	void gapIsAPartToo() {
		assertEquals(new Part(0, 3), WordSteps.at("one two", 2));
		assertEquals(new Part(3, 4), WordSteps.at("one two", 3));
		assertEquals(new Part(4, 7), WordSteps.at("one two", 4));
		assertEquals(new Part(7, 7), WordSteps.at("one two", 7));
		assertEquals(new Part(0, 0), WordSteps.at("", 0));
	}

	@Test
	void stepsLeadOnAndComeToTheEnds() {
		Random random = new Random(29);
		String letters = "ab 1.,'\n\u0301\u05d0\u0e01\u6771\ud83d\ude00";
		for (int round = 0; round < 500; round++) {
			StringBuilder text = new StringBuilder();
			for (int i = random.nextInt(20); i > 0; i--) {
				text.append(letters.charAt(random.nextInt(letters.length())));
			}
			String words = text.toString();
			for (int at = 1; at <= words.length(); at = WordSteps.after(words, at) + 1) {
				int to = WordSteps.before(words, at);
				assertEquals(true, to >= 0 && to < at, words + " before " + at);
			}
			for (int at = 0; at < words.length(); at++) {
				int to = WordSteps.after(words, at);
				assertEquals(true, to > at && to <= words.length(), words + " after " + at);
				Part part = WordSteps.at(words, at);
				assertEquals(true, part.start() <= at && at < part.end(), words + " at " + at);
			}
		}
	}
}
