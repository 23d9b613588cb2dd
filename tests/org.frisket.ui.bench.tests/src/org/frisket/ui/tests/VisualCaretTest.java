package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.frisket.typography.VisualOrder;
import org.frisket.ui.bench.internal.typing.TypedText;
import org.frisket.ui.bench.internal.typing.VisualCaret;
import org.junit.jupiter.api.Test;

class VisualCaretTest {

	private static List<Integer> walk(String words, int from, boolean right) {
		TypedText text = new TypedText(words, 100);
		text.setCaret(from);
		List<Integer> walked = new ArrayList<>();
		for (int i = 0; i <= words.length() && (walked.isEmpty() || walked.get(walked.size() - 1) != text.caret()); i++) {
			walked.add(text.caret());
			VisualCaret.move(text, right);
		}
		return walked;
	}

	@Test
	void arrowsPointWhereTheCaretGoes() {
		assertEquals(List.of(0, 1, 2, 3), walk("abc", 0, true));
		assertEquals(List.of(0, 1, 2, 3), walk("אבג", 0, false));
		assertEquals(List.of(3, 2, 1, 0), walk("אבג", 3, true));
		assertEquals(List.of(0, 1, 2, 5, 4, 3, 6), walk("a אבגb", 0, true));
	}

	@Test
	void linesAreLeftAsTheyAreRead() {
		assertEquals(List.of(0, 1, 2, 3, 4, 5), walk("אב\nגד", 0, false));
		assertEquals(List.of(5, 4, 3, 2, 1, 0), walk("אב\nגד", 5, true));
	}

	@Test
	void whatIsReadAsOneCharacterIsPassedAtOnce() {
		// alef with its vowel sign, then bet
		assertEquals(List.of(0, 2, 3), walk("א\u05B8ב", 0, false));
	}

	/** UAX #29, rule GB9c since Unicode 15.1: consonants that a virama binds are one character. */
	@Test
	void boundConsonantsAreOneCharacter() {
		assertEquals(List.of(0, 1, 2, 6), walk("नमस्ते", 0, true));
		assertEquals(List.of(0, 4), walk("क्षि", 0, true));
		assertEquals(List.of(4, 0), walk("क्षि", 4, false));
		TypedText text = new TypedText("नमस्ते", 100);
		text.deleteBefore();
		assertEquals("नम", text.text());
	}

	/** Home leads to where reading starts, at the right of a line that is read to the left. */
	@Test
	void lineStartIsWhereReadingStarts() {
		TypedText text = new TypedText("ab\nאבג", 100);
		text.lineStart();
		assertEquals(3, text.caret());
		assertEquals(3, VisualOrder.of(text.text(), 3, 6).caret(text.caret()));
		text.lineEnd();
		assertEquals(6, text.caret());
		assertEquals(0, VisualOrder.of(text.text(), 3, 6).caret(text.caret()));
	}
}
