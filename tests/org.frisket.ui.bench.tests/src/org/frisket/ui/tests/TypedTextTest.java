package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.ui.bench.internal.typing.TypedText;
import org.junit.jupiter.api.Test;

class TypedTextTest {

	@Test
	void charactersGoInAtTheCaret() {
		TypedText text = new TypedText("Hor", 100);
		text.left();
		assertTrue(text.insert("arbou"));
		assertEquals("Hoarbour", text.text());
		assertEquals(7, text.caret());
		text.deleteAfter();
		assertEquals("Hoarbou", text.text());
		text.deleteAfter();
		text.deleteBefore();
		assertEquals("Hoarbo", text.text());
	}

	@Test
	void whatAJobCannotHoldIsLeftOut() {
		TypedText text = new TypedText("", 100);
		text.insert("a\r\nb\rc\td\u0000\u0007\uD800e\uFFFE\u0085f");
		assertEquals("a\nb\nc def", text.text());
	}

	@Test
	void longTextIsCutWhereItMayBe() {
		TypedText text = new TypedText("ab", 5);
		assertFalse(text.insert("cdef"));
		assertEquals("abcde", text.text());
		assertFalse(text.insert("x"));
		assertEquals("abcde", text.text());
		TypedText pair = new TypedText("abcd", 5);
		assertFalse(pair.insert("\uD83D\uDE00"));
		assertEquals("abcd", pair.text());
	}

	@Test
	void accentsAndPairsAreOneCharacter() {
		TypedText text = new TypedText("ae\u0301\uD83D\uDE00", 100);
		text.left();
		assertEquals(3, text.caret());
		text.deleteBefore();
		assertEquals("a\uD83D\uDE00", text.text());
		text.right();
		assertEquals(3, text.caret());
		text.right();
		assertEquals(3, text.caret());
		text.deleteBefore();
		text.deleteBefore();
		text.deleteBefore();
		text.left();
		assertEquals("", text.text());
	}

	@Test
	void caretGoesToTheNearestPlaceOfTheNextLine() {
		TypedText text = new TypedText("abc\nxyz\n\nq", 100);
		// the second line is set twice as wide
		List<Point> places = new ArrayList<>();
		for (int i = 0; i <= 3; i++) {
			places.add(new Point(i, 0));
		}
		for (int i = 0; i <= 3; i++) {
			places.add(new Point(2 * i, 10));
		}
		places.add(new Point(0, 20));
		places.add(new Point(0, 30));
		places.add(new Point(1, 30));
		text.setCaret(2);
		text.down(places);
		assertEquals(5, text.caret());
		text.down(places);
		assertEquals(8, text.caret());
		text.down(places);
		assertEquals(9, text.caret());
		text.down(places);
		assertEquals(10, text.caret());
		text.up(places);
		assertEquals(8, text.caret());
		text.up(places);
		text.lineEnd();
		assertEquals(7, text.caret());
		text.up(places);
		assertEquals(3, text.caret());
		text.lineStart();
		assertEquals(0, text.caret());
		text.up(places);
		assertEquals(0, text.caret());
	}

	@Test
	void caretMovesThoughNoPlaceIsKnown() {
		TypedText text = new TypedText("abc\nxyz", 100);
		text.up(List.of());
		assertEquals(0, text.caret());
		text.down(List.of());
		assertEquals(4, text.caret());
	}

	@Test
	void selectionReachesFromWhereItWasBegunToTheCaret() {
		TypedText text = new TypedText("Harbour Lane", 100);
		assertFalse(text.hasSelection());
		text.extend(TypedText::left);
		text.extend(TypedText::left);
		assertEquals("ne", text.selected());
		text.extend(TypedText::lineStart);
		text.extend(TypedText::right);
		assertEquals("arbour Lane", text.selected());
		text.extend(TypedText::lineEnd);
		assertFalse(text.hasSelection());
		text.extend(TypedText::wordLeft);
		assertEquals("Lane", text.selected());
		text.release();
		assertEquals(8, text.caret());
		assertEquals("", text.selected());
	}

	@Test
	void whatIsTypedTakesThePlaceOfTheSelection() {
		TypedText text = new TypedText("Harbour", 7);
		text.selectAll();
		assertTrue(text.insert("Quay"));
		assertEquals("Quay", text.text());
		assertEquals(4, text.caret());
		text.extend(TypedText::left);
		text.deleteBefore();
		assertEquals("Qua", text.text());
		text.extend(TypedText::textStart);
		text.deleteAfter();
		assertEquals("", text.text());
		assertFalse(text.hasSelection());
	}

	@Test
	void wordsAreSteppedOverAndSelected() {
		TypedText text = new TypedText("At  Harbour Lane", 100);
		text.setCaret(0);
		text.wordRight();
		assertEquals(2, text.caret());
		text.wordRight();
		assertEquals(11, text.caret());
		text.wordLeft();
		assertEquals(4, text.caret());
		text.wordLeft();
		text.wordLeft();
		assertEquals(0, text.caret());
		text.setCaret(6);
		text.selectWord();
		assertEquals("Harbour", text.selected());
		text.textEnd();
		text.release();
		text.selectWord();
		assertFalse(text.hasSelection());
	}
}
