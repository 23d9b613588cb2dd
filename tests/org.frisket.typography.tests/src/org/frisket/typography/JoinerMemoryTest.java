package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.junit.jupiter.api.Test;

/** Words that did not change are neither joined nor cleaned again, and nobody can tell from the result. */
class JoinerMemoryTest {

	private static final String[] LINES = { "harbour lane", "ferry banner", "place cards", "gift tags", "open daily",
			"paper works", "low tide", "quay side", "blue hour", "jetty walk" };
	private static final double TOUCH = 0.3;

	/** Keeps everything and tells what was new. */
	private static final class Counting implements Memory {

		private final Map<Object, Object> known = new HashMap<>();

		@Override
		@SuppressWarnings("unchecked")
		public <R> R get(Object key, Supplier<R> computation) {
			Object kept = known.get(key);
			if (kept == null) {
				kept = computation.get();
				known.put(key, kept);
			}
			return (R) kept;
		}
	}

	private static SetText set(String text, Alignment alignment, FontFace face) {
		return TextSetter.set(text, face, Setting.ofCapHeight(20).withAlignment(alignment), Monitor.NONE);
	}

	private static Joined join(SetText text, Memory memory) {
		return Joiner.join(text, TOUCH, false, Tolerance.DEFAULT, memory, Monitor.NONE);
	}

	private static Region clean(SetText text, Memory memory) {
		return new OutlineCleaner(memory).anywhere()
				.clean(text.outline(), FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE).region();
	}

	/** In full, to the last bit. */
	private static String bits(Joined joined) {
		return joined.shifts() + " " + joined.loose() + " " + joined.detached() + " " + joined.text().lines() + " "
				+ joined.text().outline();
	}

	@Test
	void onlyTheChangedWordIsJoinedAndCleanedAgain() throws Exception {
		FontFace face = Fonts.system(Fonts.DANCING);
		for (Alignment alignment : List.of(Alignment.LEFT, Alignment.CENTRE, Alignment.RIGHT)) {
			Counting words = new Counting();
			Counting clusters = new Counting();
			String text = String.join("\n", LINES);
			clean(join(set(text, alignment, face), words).text(), clusters);
			int joinedBefore = words.known.size();
			int cleanedBefore = clusters.known.size();
			assertTrue(joinedBefore > 20 && cleanedBefore >= 20, joinedBefore + " " + cleanedBefore);
			// the longest line grows, so that all others move where lines are not set to the left; of known letters
			String retyped = text.replace("ferry banner", "ferry bannerets");
			clean(join(set(retyped, alignment, face), words).text(), clusters);
			assertEquals(1, words.known.size() - joinedBefore, alignment + ": words joined");
			int cleaned = clusters.known.size() - cleanedBefore;
			assertTrue(cleaned >= 1 && cleaned <= 3, alignment + ": " + cleaned + " clusters cleaned");
		}
	}

	@Test
	void rememberedWordsComeToTheSameBits() throws Exception {
		Random random = new Random(71);
		for (FontFace face : List.of(Fonts.system(Fonts.DANCING), Fonts.sans(), Fonts.serif())) {
			Counting words = new Counting();
			Counting clusters = new Counting();
			for (int i = 0; i < 12; i++) {
				List<String> lines = new ArrayList<>(Arrays.asList(LINES).subList(0, 4));
				Collections.shuffle(lines, random);
				lines.set(random.nextInt(4), "j\u00e9tty " + (char) ('a' + random.nextInt(26)) + "ijk \u201cLo\u201d");
				Alignment alignment = Alignment.values()[random.nextInt(Alignment.values().length)];
				SetText text = set(String.join("\n", lines), alignment, face);
				Joined warm = join(text, words);
				Joined cold = join(text, Memory.NONE);
				String what = face.fullName() + " " + alignment + " " + lines;
				assertEquals(bits(cold), bits(warm), what);
				assertEquals(clean(cold.text(), Memory.NONE).toString(), clean(warm.text(), clusters).toString(), what);
			}
		}
	}

	@Test
	void wordsOfAnotherTouchSizeOrToleranceAreJoinedForThemselves() throws Exception {
		Counting words = new Counting();
		SetText text = set("lane", Alignment.LEFT, Fonts.sans());
		join(text, words);
		int before = words.known.size();
		join(text, words);
		assertEquals(before, words.known.size());
		Joiner.join(text, 2 * TOUCH, false, Tolerance.DEFAULT, words, Monitor.NONE);
		assertEquals(before + 1, words.known.size(), "another touch, the same shapes");
		Joiner.join(text, TOUCH, false, new Tolerance(0.05), words, Monitor.NONE);
		assertTrue(words.known.size() > before + 2, "another tolerance");
		int finer = words.known.size();
		join(TextSetter.set("lane", Fonts.sans(), Setting.ofCapHeight(21), Monitor.NONE), words);
		assertTrue(words.known.size() > finer, "another size");
	}

	@Test
	void cleaningAnywhereMovesNothingThatCounts() throws Exception {
		SetText text = join(set(String.join("\n", LINES), Alignment.CENTRE, Fonts.system(Fonts.DANCING)), Memory.NONE)
				.text();
		Region there = new OutlineCleaner().clean(text.outline(), FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE)
				.region();
		Region anywhere = clean(text, Memory.NONE);
		assertEquals(there.nodeCount(), anywhere.nodeCount());
		assertEquals(there.area(), anywhere.area(), 1e-6);
		assertEquals(there.perimeter(), anywhere.perimeter(), 1e-6);
	}
}
