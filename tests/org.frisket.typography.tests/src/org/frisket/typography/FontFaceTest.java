package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.typography.face.CapHeightOrigin;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FontFaceTest {

	@Test
	void trueTypeFontSaysItsNames() throws Exception {
		FontFace face = Fonts.sans();
		assertEquals("Liberation Sans", face.family());
		assertEquals("Regular", face.style());
		assertEquals("Liberation Sans", face.fullName());
		assertEquals("LiberationSans", face.postScriptName());
		assertEquals(2048, face.unitsPerEm());
		assertEquals(Optional.empty(), face.source());
		assertTrue(face.licence().contains("Open Font License"), face.licence());
	}

	@Test
	void cffFontSaysItsNames() throws Exception {
		Path path = Fonts.path(Fonts.LOBSTER);
		FontFace face = FontFace.read(path);
		assertTrue(face.family().startsWith("Lobster"), face.family());
		assertEquals(1000, face.unitsPerEm());
		assertEquals(Optional.of(path), face.source());
	}

	@Test
	void embeddingRestrictionIsReported() throws Exception {
		// table OS/2 of Debian's OpenType Bebas Neue, as fontTools reads it, says 8
		assertEquals(8, Fonts.system(Fonts.BEBAS).embedding());
		assertEquals(0, Fonts.sans().embedding());
	}

	@Test
	void coverageIsByCharacter() throws Exception {
		FontFace face = Fonts.sans();
		assertTrue(face.covers('A'));
		assertTrue(face.covers('é'));
		assertFalse(face.covers(0x2740), "Liberation has no florette");
		assertFalse(face.covers(0x1F600));
		assertTrue(Fonts.symbols().covers(0x2740), "DejaVu Sans has the florette U+2740");
		assertTrue(Fonts.system(Fonts.SYMBOLA).covers(0x1F600), "Symbola has U+1F600 beyond the first plane");
	}

	@Test
	void digestIsThatOfTheWholeFile() throws Exception {
		byte[] bytes = Fonts.embeddedBytes("liberation/LiberationSans-Regular.ttf");
		String expected = String.format("%064x", new java.math.BigInteger(1,
				java.security.MessageDigest.getInstance("SHA-256").digest(bytes)));
		assertEquals(expected, Fonts.sans().digest());
	}

	@Test
	void callersBytesAreNotKept() throws Exception {
		byte[] bytes = Fonts.embeddedBytes("liberation/LiberationSans-Regular.ttf");
		FontFace face = FontFace.read(bytes, "sans");
		String digest = Fonts.sans().digest();
		bytes[500]++;
		face.bytes()[500]++;
		assertEquals(digest, face.digest());
	}

	@ParameterizedTest
	@ValueSource(strings = { Fonts.DEJAVU_SANS, Fonts.DEJAVU_SERIF, Fonts.SYMBOLA, Fonts.DANCING, Fonts.LOBSTER,
			Fonts.KAUSHAN, Fonts.SLAB, Fonts.BEBAS })
	void capHeightIsThatOfTheOutlineOfH(String font) throws Exception {
		FontFace face = Fonts.system(font);
		Font awt = Font.createFont(Font.TRUETYPE_FONT, Fonts.path(font).toFile())
				.deriveFont((float) face.unitsPerEm());
		Rectangle2D bounds = awt.createGlyphVector(new FontRenderContext(null, true, true), "H").getOutline()
				.getBounds2D();
		assertEquals(CapHeightOrigin.LETTER_H, face.capHeightOrigin());
		assertEquals(bounds.getHeight(), face.capHeight(), face.unitsPerEm() / 2048.0);
		assertEquals(bounds.getMinY(), face.outline(face.glyph('H')).bounds().minY(), face.unitsPerEm() / 2048.0);
	}

	@Test
	void fontWithoutCapitalsIsTakenAtItsWord() throws Exception {
		byte[] bytes = Files.readAllBytes(Fonts.path(Fonts.NO_CAPITALS));
		FontFace face = FontFace.read(bytes, "no capitals");
		ByteBuffer edit = ByteBuffer.wrap(bytes);
		int capHeight = edit.getInt(Fonts.entry(bytes, "OS/2") + 8) + 88;
		assertFalse(face.covers('H') || face.covers('E'));
		assertEquals(CapHeightOrigin.HEADER, face.capHeightOrigin());
		assertEquals(edit.getShort(capHeight), face.capHeight());

		edit.putShort(capHeight, (short) 0);
		FontFace silent = FontFace.read(bytes, "silent");
		assertEquals(CapHeightOrigin.GUESS, silent.capHeightOrigin());
		assertEquals(0.7 * face.unitsPerEm(), silent.capHeight());
	}

	@Test
	void outlineStandsOnBaselineWithYDown() throws Exception {
		FontFace face = Fonts.sans();
		var bounds = face.outline(face.glyph('H')).bounds();
		assertEquals(0, bounds.maxY());
		assertEquals(-1409, bounds.minY(), "cap height of Liberation Sans as its designers drew it");
	}

	@Test
	void contoursAreClosedAndExact() throws Exception {
		for (FontFace face : List.of(Fonts.sans(), Fonts.symbols())) {
			for (int glyph = 0; glyph < face.glyphCount(); glyph += 7) {
				for (Contour contour : face.outline(glyph).contours()) {
					assertTrue(contour.isClosed());
					assertEquals(contour.start(), contour.end());
				}
			}
		}
	}

	@Test
	void quadraticBecomesItsExactCubic() throws Exception {
		FontFace face = Fonts.sans();
		Outline o = face.outline(face.glyph('o'));
		for (Contour contour : o.contours()) {
			contour.segments().stream().filter(Cubic.class::isInstance).map(Cubic.class::cast).forEach(c -> {
				// both arms of a raised quadratic point to the one control point, which lies on half units
				Point first = c.start().towards(c.control1(), 1.5);
				Point second = c.end().towards(c.control2(), 1.5);
				assertEquals(first.x(), second.x(), 1e-9);
				assertEquals(first.y(), second.y(), 1e-9);
				assertEquals(Math.rint(first.x() * 2), first.x() * 2, 1e-9);
			});
		}
	}

	@Test
	void noSuchGlyphHasNoOutline() throws Exception {
		FontFace face = Fonts.sans();
		assertTrue(face.outline(-1).isEmpty());
		assertTrue(face.outline(face.glyphCount()).isEmpty());
		assertTrue(face.outline(face.glyph(' ')).isEmpty());
	}

	@Test
	void manyThreadsSeeTheSameGlyphs() throws Exception {
		FontFace alone = Fonts.serif();
		FontFace shared = Fonts.serif();
		List<Outline> expected = IntStream.range(0, 400).mapToObj(alone::outline).toList();
		List<Outline> seen = IntStream.range(0, 4000).parallel().mapToObj(i -> shared.outline(i % 400)).toList();
		for (int i = 0; i < seen.size(); i++) {
			assertEquals(expected.get(i % 400), seen.get(i));
		}
		assertSame(shared.outline(40), shared.outline(40));
	}
}
