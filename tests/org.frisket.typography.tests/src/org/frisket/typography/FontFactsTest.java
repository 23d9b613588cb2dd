package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import org.frisket.typography.face.CodePoints;
import org.frisket.typography.face.Embedding;
import org.frisket.typography.face.StyleClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read from the tables of a face. */
class FontFactsTest {

	private static final String SANS = "liberation/LiberationSans-Regular.ttf";

	@ParameterizedTest
	@ValueSource(strings = { Fonts.DEJAVU_SANS, Fonts.DANCING, Fonts.LOBSTER, Fonts.SYMBOLA, Fonts.NO_CAPITALS,
			"opentype/urw-base35/Z003-MediumItalic.otf" })
	void charactersAreThoseTheShaperAndTheRuntimeSee(String font) throws Exception {
		Path path = Fonts.path(font);
		FontFace face = FontFace.read(path);
		CodePoints characters = face.codePoints();
		Font runtime = Font.createFont(Font.TRUETYPE_FONT, path.toFile());
		assertTrue(characters.size() > 50);
		for (int c = 0; c <= 0x1FFFF; c++) {
			assertEquals(face.covers(c), characters.contains(c), "character " + Integer.toHexString(c));
			if (c > 0x20 && Character.getType(c) != Character.FORMAT && !Character.isISOControl(c)
					&& Character.getType(c) != Character.UNASSIGNED && c != 0x2028 && c != 0x2029) {
				assertEquals(runtime.canDisplay(c), characters.contains(c), "character " + Integer.toHexString(c));
			}
		}
	}

	@Test
	void glyphsAndCharactersBelongTogether() throws Exception {
		FontFace face = Fonts.symbols();
		face.charactersOfGlyphs().forEach((glyph, characters) -> characters
				.forEach(c -> assertEquals(glyph, face.glyph(c), "character " + Integer.toHexString(c))));
		assertEquals(face.codePoints().size(),
				face.charactersOfGlyphs().values().stream().mapToInt(List::size).sum());
	}

	@Test
	void mapsOfEveryFormAreRead() throws Exception {
		int a = Fonts.sans().glyph('A');
		ByteBuffer four = map(4, 32);
		four.putShort((short) 32).putShort((short) 0).putShort((short) 4).putShort((short) 0).putShort((short) 0)
				.putShort((short) 0).putShort((short) 'C').putShort((short) -1).putShort((short) 0)
				.putShort((short) 'A').putShort((short) -1).putShort((short) (a - 'A')).putShort((short) 1)
				.putShort((short) 0).putShort((short) 0);
		assertMap(four, 3, "ABC");
		ByteBuffer six = map(6, 16);
		six.putShort((short) 16).putShort((short) 0).putShort((short) 'A').putShort((short) 3).putShort((short) a)
				.putShort((short) 0).putShort((short) (a + 2));
		assertMap(six, 3, "AC");
		for (int format : new int[] { 12, 13 }) {
			ByteBuffer groups = map(format, 40);
			groups.putShort((short) 0).putInt(40).putInt(0).putInt(2).putInt('A').putInt('B').putInt(a)
					.putInt(0x1F600).putInt(0x1F601).putInt(a + 4);
			assertMap(groups, 10, "AB\uD83D\uDE00\uD83D\uDE01");
		}
		ByteBuffer zero = map(0, 262);
		zero.putShort((short) 262).putShort((short) 0);
		zero.put(12 + 6 + 'A', (byte) a);
		assertMap(zero, 0, "A");
	}

	/** A cmap table with one map whose place in the encoding record is still to be filled. */
	private static ByteBuffer map(int format, int length) {
		ByteBuffer table = ByteBuffer.allocate(12 + length);
		table.putShort((short) 0).putShort((short) 1).putShort((short) 3).putShort((short) 1).putInt(12);
		return table.putShort((short) format);
	}

	private static void assertMap(ByteBuffer table, int encoding, String characters) throws Exception {
		table.putShort(4, (short) (encoding == 0 ? 1 : 3)).putShort(6, (short) (encoding == 3 ? 1 : encoding));
		byte[] font = new FontSurgery(Fonts.embeddedBytes(SANS)).with("cmap", table.array()).font();
		FontFace face = FontFace.read(font, "mapped");
		assertEquals(CodePoints.in(characters), face.codePoints());
		for (int c : characters.codePoints().toArray()) {
			assertTrue(face.covers(c), "the shaper sees it too");
			assertTrue(face.charactersOfGlyphs().get(face.glyph(c)).contains(c), "as the same glyph");
		}
		for (int length = 4; length < table.capacity(); length += 3) {
			byte[] cut = new FontSurgery(font).with("cmap", Arrays.copyOf(table.array(), length)).font();
			assertTrue(FontFace.read(cut, "cut").codePoints().size() <= characters.length());
		}
	}

	@Test
	void senselessMapsAreShort() throws Exception {
		ByteBuffer groups = map(12, 16 + 12 * 400);
		groups.putShort((short) 0).putInt(16 + 12 * 400).putInt(0).putInt(-1);
		for (int i = 0; i < 400; i++) {
			groups.putInt(0).putInt(-1).putInt(1);
		}
		byte[] font = new FontSurgery(Fonts.embeddedBytes(SANS)).with("cmap", groups.array()).font();
		FontFace face = FontFace.read(font, "senseless");
		assertTrue(face.codePoints().size() <= 0xFFFF);
	}

	@Test
	void namesOfGlyphsFollowTheStandardOrder() throws Exception {
		FontFace face = Fonts.sans();
		List<String> names = face.glyphNames();
		assertEquals(face.glyphCount(), names.size());
		assertEquals(".notdef", names.get(0));
		assertEquals("A", names.get(face.glyph('A')));
		assertEquals("germandbls", names.get(face.glyph(0xDF)));
		assertEquals("Aringacute", names.get(face.glyph(0x1FA)));
	}

	@ParameterizedTest
	@CsvSource({ Fonts.DANCING + ",A,A", Fonts.LOBSTER + ",\u00E9,eacute", Fonts.SLAB + ",&,ampersand",
			"opentype/urw-base35/C059-Roman.otf,\u0141,Lslash" })
	void namesOfGlyphsInCompactFonts(String font, String character, String name) throws Exception {
		FontFace face = Fonts.system(font);
		assertEquals(name, face.glyphNames().get(face.glyph(character.codePointAt(0))));
	}

	@Test
	void styleIsThatOfTheHeader() throws Exception {
		assertEquals(new StyleClass(400, 5, false), Fonts.sans().styleClass());
		byte[] bytes = Fonts.embeddedBytes("liberation/LiberationSans-BoldItalic.ttf");
		assertEquals(new StyleClass(700, 5, true), FontFace.read(bytes, "bold").styleClass());
		byte[] plain = new FontSurgery(bytes).without("OS/2").font();
		assertEquals(new StyleClass(700, 5, true), FontFace.read(plain, "without OS/2").styleClass());
	}

	@Test
	void xHeightIsMeasured() throws Exception {
		byte[] bytes = Fonts.embeddedBytes(SANS);
		FontFace face = FontFace.read(bytes, "x");
		Font runtime = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(bytes)).deriveFont(2048f);
		double expected = runtime.createGlyphVector(new FontRenderContext(null, true, true), "x").getOutline()
				.getBounds2D().getHeight();
		assertEquals(expected, face.xHeight(), 0.51);
	}

	@ParameterizedTest
	@CsvSource({ "0,INSTALLABLE,true,true", "2,RESTRICTED,true,true", "4,PREVIEW_AND_PRINT,true,true",
			"8,EDITABLE,true,true", "14,EDITABLE,true,true", "6,PREVIEW_AND_PRINT,true,true",
			"264,EDITABLE,false,true", "516,PREVIEW_AND_PRINT,true,false", "1,INSTALLABLE,true,true" })
	void embeddingBitsHaveWords(int bits, Embedding.Permission permission, boolean subsetting, boolean outlines) {
		Embedding embedding = Embedding.of(bits);
		assertEquals(new Embedding(permission, subsetting, outlines), embedding);
		String english = embedding.words(Locale.ENGLISH);
		assertTrue(english.startsWith("The font may"), english);
		assertTrue(english.endsWith("for the licence to say."), english);
		assertEquals(!subsetting, english.contains("whole"));
		assertTrue(embedding.words(Locale.GERMAN).startsWith("Die Schrift darf"));
		assertFalse(embedding.words(Locale.JAPANESE).isEmpty());
	}
}
