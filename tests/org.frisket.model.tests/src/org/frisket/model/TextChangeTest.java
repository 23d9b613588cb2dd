package org.frisket.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

class TextChangeTest {

	/** Small, so that equal neighbours are the rule: letters, pairs, accents, joining scripts, half pairs. */
	private static final String[] SMALL = { "a", "a", "b", "\u0301", "😀", "😁", "ب", "ت", "क", "्", "ष", "\uD83D", "\n" };

	private static List<Integer> places(TextChange change, int... indices) {
		return IntStream.of(indices).map(change::place).filter(at -> at >= 0).boxed().toList();
	}

	private static List<Integer> carried(String before, String after, int... indices) {
		return places(TextChange.between(before, after), indices);
	}

	private static String part(String before, String after, int start, int end) {
		return TextChange.between(before, after).part(start, end)
				.map(part -> after.substring(part.start(), part.end())).orElse("-");
	}

	@Test
	void characterKeepsItsPlaceAmongTheOthers() {
		assertEquals(List.of(3), carried("ferry", "ferry", 3));
		assertEquals(List.of(7), carried("ferry", "The ferry", 3));
		assertEquals(List.of(3), carried("ferry", "ferry day", 3));
		assertEquals(List.of(0, 10), carried("old boat", "odd big bxt", 0, 7));
		assertEquals(List.of(), carried("ferry", "fery", 3));
		assertEquals(List.of(0), carried("ferry", "f", 0, 4));
		assertEquals(List.of(), carried("ferry", "", 0, 4));
		assertEquals(List.of(0, 6), carried("ab cd", "ax y cd", 0, 4));
	}

	@Test
	void editsInSeveralPlacesKeepTheRest() {
		Random random = new Random(5);
		for (int round = 0; round < 300; round++) {
			// every character is another one, so that what stayed is known; every second one takes a pair
			int[] before = IntStream.range(0, 40).map(i -> (i % 2 == 0 ? 0x4E00 : 0x1F300) + i).toArray();
			StringBuilder after = new StringBuilder();
			for (int c : before) {
				if (random.nextInt(4) > 0) {
					after.appendCodePoint(c);
				}
				if (random.nextInt(5) == 0) {
					after.append('x');
				}
			}
			String text = new String(before, 0, before.length);
			TextChange change = TextChange.between(text, after.toString());
			for (int i = 0, at = 0; i < before.length; i++) {
				assertEquals(after.indexOf(Character.toString(before[i])), change.place(at));
				at += Character.charCount(before[i]);
			}
		}
	}

	@Test
	void longTextsAreCompared() {
		String before = "a".repeat(9_000) + "b".repeat(9_000);
		assertEquals(List.of(0), carried(before, "a" + "c".repeat(9_000), 0, 17_000));
	}

	@Test
	void partGoesWithItsWords() {
		assertEquals("ferry", part("a ferry b", "a ferry b", 2, 7));
		assertEquals("ferry", part("a ferry b", "not a ferry b", 2, 7));
		assertEquals("fexrry", part("a ferry b", "a fexrry b", 2, 7));
		assertEquals("ferries", part("a ferr b", "a ferries b", 2, 6));
		assertEquals("ferries", part("ferr", "ferries", 0, 4));
		assertEquals("-", part("a ferry b", "a  b", 2, 7));
		assertEquals("def", part("abc def ghi", "abc def-xyz", 4, 7));
		assertEquals("fe", part("a ferry b", "a fe", 2, 7));
		assertEquals("ry", part("a ferry b", "ry b", 2, 7));
	}

	/** Both begin with the same half. */
	@Test
	void halfOfAnotherCharacterIsNotKept() {
		assertEquals(List.of(), carried("😀", "😁", 0, 1));
		assertEquals(List.of(2, 3), carried("😀", "😁😀", 0, 1));
		assertEquals(-1, TextChange.typed("x😀", "x😁", 3).place(1));
	}

	@Test
	void amongEqualLettersTheCaretTells() {
		assertEquals(List.of(0, 2), places(TextChange.typed("aa", "aaa", 2), 0, 1));
		assertEquals(List.of(1, 2), places(TextChange.typed("aa", "aaa", 1), 0, 1));
		assertEquals(List.of(0, 1), places(TextChange.typed("aa", "aaa", 3), 0, 1));
		assertEquals(List.of(0), places(TextChange.typed("aa", "a", 0), 1));
		assertEquals(List.of(0), places(TextChange.typed("aa", "a", 1), 0));
	}

	@Test
	void impossibleCaretIsNotHeeded() {
		for (int caret : new int[] { -1, 2, 40 }) {
			assertEquals(List.of(0), places(TextChange.typed("ab", "axc", caret), 0, 1), "caret " + caret);
		}
	}

	/** A text of which every character has a tag is edited in any way; the tags say what stayed. */
	@Test
	void typedChangesKeepTheLettersThatWereNotTouched() {
		Random random = new Random(11);
		for (int round = 0; round < 2_000; round++) {
			List<String> letters = new ArrayList<>();
			List<Integer> tags = new ArrayList<>();
			for (int i = random.nextInt(12); i > 0; i--) {
				letters.add(SMALL[random.nextInt(SMALL.length)]);
				tags.add(tags.size());
			}
			String before = String.join("", letters);
			List<Integer> startsBefore = starts(letters);
			int from = random.nextInt(letters.size() + 1);
			int to = from + random.nextInt(letters.size() - from + 1);
			List<String> put = new ArrayList<>();
			for (int i = random.nextInt(4); i > 0; i--) {
				put.add(SMALL[random.nextInt(SMALL.length)]);
			}
			List<String> gone = List.copyOf(letters.subList(from, to));
			letters.subList(from, to).clear();
			tags.subList(from, to).clear();
			letters.addAll(from, put);
			tags.addAll(from, put.stream().map(each -> -1).toList());
			String after = String.join("", letters);
			List<Integer> startsAfter = starts(letters);
			TextChange change = TextChange.typed(before, after, startsAfter.get(from + put.size()));
			for (int tag = 0; tag < startsBefore.size() - 1; tag++) {
				boolean replaced = tag >= from && tag < to;
				if (!replaced) {
					assertEquals(startsAfter.get(tags.indexOf(tag)), change.place(startsBefore.get(tag)),
							"'" + before + "' to '" + after + "'");
				} else if (!put.contains(gone.get(tag - from))) {
					assertEquals(-1, change.place(startsBefore.get(tag)), "'" + before + "' to '" + after + "'");
				}
			}
		}
	}

	/** Whatever the texts: in order, each a place of its own, and each an equal character. */
	@Test
	void whatStaysIsEqualAndInOrder() {
		Random random = new Random(12);
		for (int round = 0; round < 2_000; round++) {
			String before = text(random);
			String after = text(random);
			int caret = random.nextInt(after.length() + 3) - 1;
			for (TextChange change : List.of(TextChange.between(before, after), TextChange.typed(before, after, caret))) {
				int last = -1;
				for (int i = 0; i < before.length(); i++) {
					int place = change.place(i);
					if (place >= 0) {
						assertFalse(place <= last, "'" + before + "' to '" + after + "'");
						assertEquals(before.charAt(i), after.charAt(place));
						last = place;
					}
				}
			}
		}
	}

	private static String text(Random random) {
		StringBuilder text = new StringBuilder();
		for (int i = random.nextInt(12); i > 0; i--) {
			text.append(SMALL[random.nextInt(SMALL.length)]);
		}
		return text.toString();
	}

	private static List<Integer> starts(List<String> letters) {
		List<Integer> starts = new ArrayList<>(List.of(0));
		letters.forEach(letter -> starts.add(starts.get(starts.size() - 1) + letter.length()));
		return starts;
	}
}
