package org.frisket.typography.internal.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.junit.jupiter.api.Test;

/** The engine of the Java runtime against HarfBuzz, and the other way round. */
class RuntimeEngineTest {

	private static final Shaping FULL = new Shaping(true, true, "");

	private record Both(FontEngine harfBuzz, FontEngine runtime) {

		static Both of(byte[] bytes, int unitsPerEm) throws Exception {
			assumeTrue(HarfBuzzEngine.isAvailable(), "HarfBuzz cannot be loaded here");
			return new Both(HarfBuzzEngine.open(bytes, 0, unitsPerEm), RuntimeEngine.open(bytes, 0, unitsPerEm));
		}

		static Both sans() throws Exception {
			try (InputStream stream = FontEngine.class.getClassLoader()
					.getResourceAsStream("liberation/LiberationSans-Regular.ttf")) {
				return of(stream.readAllBytes(), 2048);
			}
		}
	}

	private static void outlinesAgree(Both both, int upTo, double slack) {
		for (int glyph = 0; glyph < upTo; glyph++) {
			Outline a = both.harfBuzz().outline(glyph);
			Outline b = both.runtime().outline(glyph);
			String what = "glyph " + glyph;
			assertEquals(a.contours().size(), b.contours().size(), what);
			assertEquals(area(a), area(b), 1e-3 * Math.abs(area(a)) + 500 * slack, what);
			Bounds ab = a.bounds();
			Bounds bb = b.bounds();
			if (!ab.isEmpty()) {
				assertEquals(ab.minX(), bb.minX(), slack, what);
				assertEquals(ab.maxX(), bb.maxX(), slack, what);
				assertEquals(ab.minY(), bb.minY(), slack, what);
				assertEquals(ab.maxY(), bb.maxY(), slack, what);
			}
		}
	}

	private static double area(Outline outline) {
		return outline.contours().stream().mapToDouble(Contour::signedArea).sum();
	}

	@Test
	void trueTypeOutlinesAgree() throws Exception {
		outlinesAgree(Both.sans(), 300, 1.0);
	}

	@Test
	void cffOutlinesAgree() throws Exception {
		Path font = Path.of("/usr/share/fonts/opentype/lobster/lobster.otf");
		assumeTrue(Files.exists(font));
		outlinesAgree(Both.of(Files.readAllBytes(font), 1000), 200, 1.0);
	}

	@Test
	void glyphNumbersAgree() throws Exception {
		Both both = Both.sans();
		for (int codePoint = 0x20; codePoint < 0x500; codePoint++) {
			if (!Character.isISOControl(codePoint) && Character.getType(codePoint) != Character.FORMAT) {
				assertEquals(both.harfBuzz().glyph(codePoint), both.runtime().glyph(codePoint),
						Integer.toHexString(codePoint));
			}
		}
	}

	@Test
	void kernedLinesAreEquallyWide() throws Exception {
		Both both = Both.sans();
		for (String text : List.of("AVATAR To office", "Harbour Lane", "\u05E9\u05DC\u05D5\u05DD")) {
			char[] chars = text.toCharArray();
			Run run = Run.of(chars).get(0);
			List<PlacedGlyph> a = both.harfBuzz().shape(chars, run, FULL);
			List<PlacedGlyph> b = both.runtime().shape(chars, run, FULL);
			assertEquals(a.stream().map(PlacedGlyph::glyph).toList(), b.stream().map(PlacedGlyph::glyph).toList());
			assertEquals(a.stream().map(PlacedGlyph::cluster).toList(), b.stream().map(PlacedGlyph::cluster).toList());
			for (int i = 0; i < a.size(); i++) {
				assertEquals(a.get(i).x(), b.get(i).x(), 1.0, text + " at " + i);
				assertEquals(a.get(i).advance(), b.get(i).advance(), 1.0, text + " at " + i);
			}
		}
	}

	@Test
	void kerningCanBeTurnedOff() throws Exception {
		Both both = Both.sans();
		char[] chars = "AV".toCharArray();
		Run run = Run.of(chars).get(0);
		double kerned = both.runtime().shape(chars, run, FULL).get(1).x();
		double plain = both.runtime().shape(chars, run, new Shaping(false, true, "")).get(1).x();
		assertTrue(kerned < plain - 50, kerned + " against " + plain);
	}
}
