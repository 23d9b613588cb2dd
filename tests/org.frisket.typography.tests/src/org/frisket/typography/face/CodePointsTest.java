package org.frisket.typography.face;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.Character.UnicodeScript;
import java.util.BitSet;
import java.util.Random;

import org.junit.jupiter.api.Test;

class CodePointsTest {

	@Test
	void agreesWithASetOfBits() {
		Random random = new Random(11);
		for (int round = 0; round < 200; round++) {
			BitSet bits = new BitSet();
			BitSet part = new BitSet();
			for (int i = random.nextInt(30); i > 0; i--) {
				int from = random.nextInt(200);
				bits.set(from, from + 1 + random.nextInt(8));
			}
			for (int i = random.nextInt(4); i > 0; i--) {
				int from = random.nextInt(200);
				part.set(from, from + 1 + random.nextInt(3));
			}
			CodePoints set = CodePoints.of(bits);
			for (int c = 0; c < 210; c++) {
				assertEquals(bits.get(c), set.contains(c), "character " + c + " of " + bits);
			}
			assertEquals(bits.cardinality(), set.size());
			BitSet missing = (BitSet) part.clone();
			missing.andNot(bits);
			assertEquals(missing.isEmpty(), set.containsAll(CodePoints.of(part)), part + " in " + bits);
			assertEquals(set, CodePoints.ofRanges(set.ranges()));
		}
	}

	@Test
	void textCountsWhatNeedsAGlyph() {
		assertArrayEquals(new int[] { 'a', 'b', 0x1F600, 0x1F600 },
				CodePoints.in("ba\n\u200Db\uD800\uD83D\uDE00\t").ranges());
		assertTrue(CodePoints.in("").isEmpty());
		assertTrue(CodePoints.NONE.containsAll(CodePoints.NONE));
		assertFalse(CodePoints.NONE.containsAll(CodePoints.in("a")));
	}

	@Test
	void rangesMustAscend() {
		assertThrows(IllegalArgumentException.class, () -> CodePoints.ofRanges(5, 4));
		assertThrows(IllegalArgumentException.class, () -> CodePoints.ofRanges(1, 4, 5, 6));
		assertThrows(IllegalArgumentException.class, () -> CodePoints.ofRanges(1));
	}

	@Test
	void scriptsAreCounted() {
		assertEquals(java.util.Map.of(UnicodeScript.LATIN, 2, UnicodeScript.GREEK, 1),
				CodePoints.in("aB\u03A9 1.").scripts());
	}
}
