package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

class VisualOrderTest {

	private static List<Integer> walk(String text, boolean right) {
		VisualOrder order = VisualOrder.of(text, 0, text.length());
		List<Integer> stops = IntStream.rangeClosed(0, text.length()).boxed().toList();
		int caret = stops.stream().filter(stop -> order.beside(stop, stops, !right) == stop).findFirst().orElseThrow();
		List<Integer> walked = new ArrayList<>(List.of(caret));
		for (int next = order.beside(caret, stops, right); next != caret; next = order.beside(caret, stops, right)) {
			caret = next;
			walked.add(caret);
		}
		return walked;
	}

	@Test
	void latinIsWalkedAsItIsRead() {
		assertEquals(List.of(0, 1, 2, 3), walk("abc", true));
		assertEquals(List.of(3, 2, 1, 0), walk("abc", false));
		assertFalse(VisualOrder.of("abc", 0, 3).isTurned());
		assertEquals(0, VisualOrder.of("", 0, 0).caret(0));
	}

	@Test
	void hebrewIsWalkedFromItsEnd() {
		assertEquals(List.of(3, 2, 1, 0), walk("אבג", true));
		assertTrue(VisualOrder.of("אבג", 0, 3).runsToTheLeft());
	}

	@Test
	void wordOfAnotherDirectionIsWalkedTheOtherWay() {
		// seen as ab גבא cd; the caret after the blank is that after the third Hebrew letter
		assertEquals(List.of(0, 1, 2, 3, 6, 5, 4, 7, 8, 9), walk("ab אבג cd", true));
		assertEquals(List.of(9, 8, 7, 4, 5, 6, 3, 2, 1, 0), walk("ab אבג cd", false));
	}

	@Test
	void lineOfAParagraphKeepsTheDirectionOfThat() {
		String text = "אבג\nabc אבג abc";
		assertFalse(VisualOrder.of(text, 4, text.length()).runsToTheLeft());
		assertTrue(VisualOrder.of("א abc abc", 2, 5).runsToTheLeft());
	}

	@Test
	void everyStopIsPassedOnceWhateverIsInTheText() {
		Random random = new Random(3);
		String[] some = { "a", "1", " ", "א", "ب", "(", "\u202E", "\u2067", "\u2069", "\uD83D", "😀", "\u0000", "क" };
		for (int round = 0; round < 500; round++) {
			StringBuilder text = new StringBuilder();
			for (int i = random.nextInt(10); i > 0; i--) {
				text.append(some[random.nextInt(some.length)]);
			}
			List<Integer> walked = walk(text.toString(), true);
			assertEquals(text.length() + 1, walked.size());
			assertEquals(IntStream.rangeClosed(0, text.length()).boxed().toList(), walked.stream().sorted().toList());
		}
	}
}
