package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Letters;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.junit.jupiter.api.Test;

/** Letters of real fonts, pushed together so that they overlap. */
class GlyphUnionTest {

	private static final List<File> FONTS = List.of(
			new File("/usr/share/fonts/opentype/dancingscript/DancingScript-Regular.otf"),
			new File("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf"),
			new File("/usr/share/fonts/truetype/dejavu/DejaVuSerif-Bold.ttf"),
			new File("/usr/share/fonts/truetype/ancient-scripts/Symbola_hint.ttf"));
	private static final String[] WORDS = { "Harbour Lane", "quick brown fox", "Wilhelmina Jetty", "AVATo office",
			"8800 &64@§" };
	private static final Tolerance TOLERANCE = Tolerance.DEFAULT;

	private static Region clean(Outline outline) {
		return new OutlineCleaner().clean(outline, FillRule.NON_ZERO, TOLERANCE, Monitor.NONE).region();
	}

	/** Words far apart, as on a line. */
	private static Outline line(File font, String... words) throws Exception {
		Outline line = Outline.EMPTY;
		for (int i = 0; i < words.length; i++) {
			line = line.plus(Letters.word(font, words[i], 20, 1).transformed(Transform.translation(300.0 * i, 0)));
		}
		return line;
	}

	@Test
	void whatIsRememberedOfOtherWordsChangesNothing() throws Exception {
		assumeTrue(FONTS.stream().allMatch(File::exists), "test fonts are not installed");
		Map<Object, Object> known = new HashMap<>();
		Memory memory = new Memory() {
			@Override
			@SuppressWarnings("unchecked")
			public <R> R get(Object key, Supplier<R> computation) {
				return (R) known.computeIfAbsent(key, first -> computation.get());
			}
		};
		for (File font : FONTS) {
			known.clear();
			OutlineCleaner remembering = new OutlineCleaner(memory);
			remembering.clean(line(font, "AVATo", "Jetty", "8800"), FillRule.NON_ZERO, TOLERANCE, Monitor.NONE);
			int before = known.size();
			Outline retyped = line(font, "AVATo", "Lane", "8800");
			assertEquals(new OutlineCleaner().clean(retyped, FillRule.NON_ZERO, TOLERANCE, Monitor.NONE),
					remembering.clean(retyped, FillRule.NON_ZERO, TOLERANCE, Monitor.NONE), font.getName());
			int clustersOfLane = known.size() - before;
			assertTrue(clustersOfLane >= 1 && clustersOfLane <= "Lane".length(), font.getName() + ": " + clustersOfLane);
			remembering.clean(retyped, FillRule.EVEN_ODD, TOLERANCE, Monitor.NONE);
			assertTrue(known.size() > before + clustersOfLane, "another rule is another question");
		}
	}

	@Test
	void overlappingLettersUniteCleanly() throws Exception {
		assumeTrue(FONTS.stream().allMatch(File::exists), "test fonts are not installed");
		Random random = new Random(31);
		for (int i = 0; i < 30; i++) {
			File font = FONTS.get(random.nextInt(FONTS.size()));
			String word = WORDS[random.nextInt(WORDS.length)];
			double size = 10 + random.nextInt(90);
			double squeeze = random.nextInt(4) * size / 20;
			String name = font.getName() + " " + word + " " + size + " " + squeeze;
			Outline outline = Letters.word(font, word, size, squeeze);
			Region region = clean(outline);
			RegionAssert.assertClean(region, TOLERANCE.mm(), name);
			double perimeter = outline.contours().stream().mapToDouble(Contour::length).sum();
			assertEquals(ScannedArea.of(outline, FillRule.NON_ZERO), region.area(), TOLERANCE.mm() * perimeter, name);
			assertTrue(region.equals(clean(region.toOutline())), name + ": cleaned twice");
		}
	}

	@Test
	void segmentsAwayFromTheOverlapsAreTheFontsOwn() throws Exception {
		assumeTrue(FONTS.get(0).exists(), "script font is not installed");
		Outline outline = Letters.word(FONTS.get(0), "Harbourlanepaperworksferryanniversarytag", 40, 1);
		Region region = clean(outline);
		Set<Segment> own = new HashSet<>();
		for (Contour contour : outline.contours()) {
			own.addAll(contour.segments());
			own.addAll(contour.reversed().segments());
		}
		long survived = region.contours().stream().flatMap(c -> c.segments().stream()).filter(own::contains).count();
		assertTrue(survived >= 0.7 * region.nodeCount(), survived + " of " + region.nodeCount());
		assertTrue(region.nodeCount() <= 1.3 * outline.nodeCount());
	}
}
