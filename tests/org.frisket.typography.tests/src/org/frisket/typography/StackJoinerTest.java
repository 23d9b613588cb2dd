package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.junit.jupiter.api.Test;

class StackJoinerTest {

	private static final Tolerance FINE = new Tolerance(0.01);

	private static Joined join(String text, Setting setting, boolean words) throws Exception {
		return StackJoiner.join(StackSetter.set(text, Fonts.sans(), setting, Monitor.NONE), 0.5, words, FINE,
				Monitor.NONE);
	}

	@Test
	void columnOverlapsByTheTouch() throws Exception {
		Joined joined = join("HEM", Setting.ofCapHeight(20), false);
		List<Letter> letters = joined.text().letters();
		// straight feet and heads: each stands a cap height less the touch below the one before
		for (int i = 0; i < 3; i++) {
			assertEquals(i * 19.5, letters.get(i).origin().y(), 0.02);
		}
		assertEquals(List.of(), joined.loose());
		assertEquals(19.5 - 32, joined.shifts().get(1), 0.02);
	}

	@Test
	void roundLettersMeetByTheirOutlines() throws Exception {
		List<Letter> letters = join("OSCAR", Setting.ofCapHeight(20), false).text().letters();
		for (int i = 1; i < letters.size(); i++) {
			var upper = Areas.area(letters.get(i - 1).outline());
			assertTrue(Areas.meet(upper, Areas.area(letters.get(i).outline())));
			var lower = Areas.area(letters.get(i).outline().transformed(Transform.translation(0, 0.48)));
			assertTrue(Areas.meet(upper, lower), "overlaps by nearly the touch");
			var away = Areas.area(letters.get(i).outline().transformed(Transform.translation(0, 0.52)));
			assertTrue(!Areas.meet(upper, away), "and by no more");
		}
	}

	@Test
	void dotIsMetLikeAnyPart() throws Exception {
		List<Letter> letters = join("Ei", Setting.ofCapHeight(20), false).text().letters();
		assertTrue(letters.get(1).outline().bounds().minY() < 0.01, "the dot, not the stem, meets the E");
		assertEquals(-0.5, letters.get(1).outline().bounds().minY() - letters.get(0).outline().bounds().maxY(), 0.02);
	}

	@Test
	void blanksStayUnlessClosed() throws Exception {
		Joined apart = join("HH HH", Setting.ofCapHeight(20), false);
		List<Letter> letters = apart.text().letters();
		double open = letters.get(2).outline().bounds().minY() - letters.get(1).outline().bounds().maxY();
		assertEquals(16 + 12, open, 0.02);
		letters = join("HH HH", Setting.ofCapHeight(20), true).text().letters();
		assertEquals(3 * 19.5, letters.get(3).origin().y(), 0.02);
	}

	@Test
	void columnsKeepTheirAlignment() throws Exception {
		Joined joined = join("HHH\nHH", Setting.ofCapHeight(20).withAlignment(Alignment.RIGHT), false);
		List<Letter> letters = joined.text().letters();
		assertEquals(letters.get(2).origin().y(), letters.get(4).origin().y(), 1e-9);
		assertEquals(19.5, letters.get(3).origin().y(), 0.02);
		assertEquals(letters.get(3).origin().y(), joined.text().lines().get(1).baseline(), 1e-9);
	}

	@Test
	void touchMustBePositive() {
		assertThrows(IllegalArgumentException.class,
				() -> StackJoiner.join(StackSetter.set("H", Fonts.sans(), Setting.ofCapHeight(20), Monitor.NONE), 0,
						false, FINE, Monitor.NONE));
	}
}
