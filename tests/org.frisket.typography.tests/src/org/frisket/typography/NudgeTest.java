package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.junit.jupiter.api.Test;

class NudgeTest {

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
