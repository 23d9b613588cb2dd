package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.junit.jupiter.api.Test;

class NudgeTest {

	private static List<Integer> carried(String before, String after, int... indices) {
		List<Nudge> nudges = IntStream.of(indices).mapToObj(i -> Nudge.by(i, 1, 0)).toList();
		return TextChange.between(before, after).nudges(nudges).stream().map(Nudge::index).toList();
	}

	private static List<String> spans(String before, String after, int start, int end) {
		return TextChange.between(before, after).spans(List.of(TextSpan.ofCapHeight(start, end, 9))).stream()
				.map(s -> after.substring(s.start(), s.end())).toList();
	}

	@Test
	void nudgeFollowsItsCharacter() {
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
			// every character is another one, so that what stayed is known
			int[] before = IntStream.range(0, 40).map(i -> 0x4E00 + i).toArray();
			StringBuilder after = new StringBuilder();
			for (int c : before) {
				if (random.nextInt(4) > 0) {
					after.append((char) c);
				}
				if (random.nextInt(5) == 0) {
					after.append('x');
				}
			}
			TextChange change = TextChange.between(new String(before, 0, before.length), after.toString());
			for (int i = 0; i < before.length; i++) {
				assertEquals(after.indexOf(Character.toString(before[i])), change.place(i));
			}
		}
	}

	@Test
	void longTextsAreCompared() {
		String before = "a".repeat(9_000) + "b".repeat(9_000);
		assertEquals(List.of(0), carried(before, "a" + "c".repeat(9_000), 0, 17_000));
	}

	@Test
	void spanFollowsItsWords() {
		assertEquals(List.of("ferry"), spans("a ferry b", "a ferry b", 2, 7));
		assertEquals(List.of("ferry"), spans("a ferry b", "not a ferry, b", 2, 7).stream()
				.map(s -> s.replace(",", "")).toList());
		assertEquals(List.of("fexrry"), spans("a ferry b", "a fexrry b", 2, 7));
		assertEquals(List.of("ferries"), spans("a ferr b", "a ferries b", 2, 6));
		assertEquals(List.of("ferries"), spans("ferr", "ferries", 0, 4));
		assertEquals(List.of(), spans("a ferry b", "a  b", 2, 7));
		assertEquals(List.of("def"), spans("abc def ghi", "abc def-xyz", 4, 7));
	}

	@Test
	void letterIsMovedTurnedAndScaled() throws Exception {
		SetText text = TextSetter.set("HIL", Fonts.sans(), Setting.ofCapHeight(10), Monitor.NONE);
		Bounds before = text.letters().get(1).outline().bounds();
		SetText moved = Nudge.apply(text, List.of(new Nudge(1, 2, -3, 90, 2)));
		Bounds after = moved.letters().get(1).outline().bounds();
		assertEquals(before.centre().x() + 2, after.centre().x(), 1e-9);
		assertEquals(before.centre().y() - 3, after.centre().y(), 1e-9);
		assertEquals(2 * before.height(), after.width(), 1e-9);
		assertEquals(2 * before.width(), after.height(), 1e-9);
		assertEquals(text.letters().get(0), moved.letters().get(0));
		assertEquals(text.letters().get(2), moved.letters().get(2));
	}

	@Test
	void turnIsClockwiseToTheViewer() throws Exception {
		SetText text = TextSetter.set("L", Fonts.sans(), Setting.ofCapHeight(10), Monitor.NONE);
		Bounds all = Nudge.apply(text, List.of(new Nudge(0, 0, 0, 90, 1))).letters().get(0).outline().bounds();
		// the foot of an L, at the bottom right, goes to the bottom left: the upper left stays empty
		var area = Areas.area(Nudge.apply(text, List.of(new Nudge(0, 0, 0, 90, 1))).outline());
		assertTrue(area.contains(all.minX() + 0.3, all.maxY() - 0.3));
		assertTrue(area.contains(all.minX() + 0.3, all.minY() + 0.3));
		assertTrue(!area.contains(all.maxX() - 0.3, all.maxY() - 0.3));
	}

	@Test
	void strayNudgesDoNothingAndSenselessOnesAreRefused() throws Exception {
		SetText text = TextSetter.set("a b", Fonts.sans(), Setting.ofCapHeight(10), Monitor.NONE);
		assertEquals(text, Nudge.apply(text, List.of(Nudge.by(1, 5, 5), Nudge.by(40, 5, 5))));
		assertTrue(new Nudge(0, 0, 0, 360, 1).isNone());
		assertThrows(IllegalArgumentException.class, () -> new Nudge(0, 0, 0, 0, 0));
		assertThrows(IllegalArgumentException.class, () -> Nudge.by(0, Double.NaN, 0));
	}
}
