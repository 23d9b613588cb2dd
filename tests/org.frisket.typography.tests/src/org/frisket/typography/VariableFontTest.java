package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.typography.face.Axis;
import org.frisket.typography.face.AxisSettings;
import org.frisket.typography.face.NamedInstance;
import org.frisket.typography.source.FolderFontSource;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On a variable font made here: axis wght from 100 to 900 moves the sides of the letter H apart. */
class VariableFontTest {

	private static final int WIDER_AT_MOST = 400;

	@TempDir
	Path folder;

	private byte[] font;
	private FontFace face;

	@BeforeEach
	void makeFont() throws Exception {
		FontSurgery surgery = new FontSurgery(Fonts.embeddedBytes("liberation/LiberationSans-Regular.ttf"));
		FontFace plain = FontFace.read(surgery.font(), "plain");
		surgery.withNames(Map.of(1, "Swell", 2, "Regular", 4, "Swell Regular", 6, "Swell-Regular", 256, "Weight", 257,
				"Bold", 258, "Swell-Bold", 259, "Thin"));
		surgery.with("fvar", fvar()).with("gvar", gvar(plain.glyphCount(), plain.glyph('H')));
		font = surgery.font();
		face = FontFace.read(font, "variable");
	}

	private static byte[] fvar() {
		ByteBuffer table = ByteBuffer.allocate(16 + 20 + 2 * 10);
		table.putShort((short) 1).putShort((short) 0).putShort((short) 16).putShort((short) 2).putShort((short) 1)
				.putShort((short) 20).putShort((short) 2).putShort((short) 10);
		table.put("wght".getBytes(StandardCharsets.US_ASCII)).putInt(100 << 16).putInt(400 << 16).putInt(900 << 16)
				.putShort((short) 0).putShort((short) 256);
		table.putShort((short) 257).putShort((short) 0).putInt(700 << 16).putShort((short) 258);
		table.putShort((short) 259).putShort((short) 0).putInt(100 << 16).putShort((short) 0xFFFF);
		return table.array();
	}

	/** One glyph with one tuple at the heaviest end; every point moves right by as much as its number says. */
	private static byte[] gvar(int glyphs, int glyph) {
		// H has 12 points; the four phantom points follow, of which the second is the advance
		int points = 12;
		int[] moves = new int[points + 4];
		// points right of the bar: those of the right stem
		for (int i : new int[] { 0, 1, 10, 11 }) {
			moves[i] = 0;
		}
		moves[points + 1] = WIDER_AT_MOST;
		ByteBuffer data = ByteBuffer.allocate(200);
		data.putShort((short) 1).putShort((short) 10).putShort((short) 0).putShort((short) 0xA000)
				.putShort((short) 0x4000);
		int start = data.position();
		data.put((byte) 0);
		data.put((byte) (0x40 | moves.length - 1));
		for (int move : moves) {
			data.putShort((short) move);
		}
		data.put((byte) (0x80 | moves.length - 1));
		int size = data.position();
		data.putShort(4, (short) (size - start));
		int padded = size + 1 & ~1;
		ByteBuffer table = ByteBuffer.allocate(20 + 4 * (glyphs + 1) + padded);
		table.putShort((short) 1).putShort((short) 0).putShort((short) 1).putShort((short) 0).putInt(table.capacity())
				.putShort((short) glyphs).putShort((short) 1).putInt(20 + 4 * (glyphs + 1));
		for (int i = 0; i <= glyphs; i++) {
			table.putInt(i > glyph ? padded : 0);
		}
		table.put(data.array(), 0, size);
		return table.array();
	}

	/** Two stops on the one axis, the second in the form that links to another style. */
	private static byte[] stat() {
		ByteBuffer table = ByteBuffer.allocate(18 + 8 + 4 + 12 + 16);
		table.putShort((short) 1).putShort((short) 1).putShort((short) 8).putShort((short) 1).putInt(18)
				.putShort((short) 2).putInt(26);
		table.put("wght".getBytes(StandardCharsets.US_ASCII)).putShort((short) 256).putShort((short) 0);
		table.putShort((short) 4).putShort((short) 16);
		table.putShort((short) 1).putShort((short) 0).putShort((short) 0).putShort((short) 259).putInt(100 << 16);
		table.putShort((short) 3).putShort((short) 0).putShort((short) 0).putShort((short) 257).putInt(700 << 16)
				.putInt(400 << 16);
		return table.array();
	}

	private double advance(FontFace varied, String text) {
		return TextSetter.set(text, varied, Setting.ofCapHeight(varied.capHeight()), Monitor.NONE).lines().get(0)
				.width();
	}

	@Test
	void axesAndInstancesAreRead() {
		assertEquals(List.of(new Axis("wght", "Weight", 100, 400, 900, false, List.of())), face.axes());
		assertEquals(List.of("Bold", "Thin"), face.instances().stream().map(NamedInstance::name).toList());
		assertEquals(Map.of("wght", 700.0), face.instances().get(0).settings().values());
		assertTrue(face.canVary());
		assertTrue(face.settings().isEmpty());
	}

	@Test
	void stopsHaveNames() throws Exception {
		FontFace named = FontFace.read(new FontSurgery(font).with("STAT", stat()).font(), "with stops");
		assertEquals(List.of(new Axis.Stop("Thin", 100), new Axis.Stop("Bold", 700)), named.axes().get(0).stops());
		byte[] cut = java.util.Arrays.copyOf(stat(), 50);
		FontFace shortened = FontFace.read(new FontSurgery(font).with("STAT", cut).font(), "cut");
		assertEquals(1, shortened.axes().get(0).stops().size());
	}

	@Test
	void axisWhoseTagIsNoneMakesAPlainFont() throws Exception {
		byte[] odd = fvar();
		odd[17] = 0;
		assertTrue(FontFace.read(new FontSurgery(font).with("fvar", odd).font(), "odd").axes().isEmpty());
	}

	@Test
	void advanceFollowsTheAxis() {
		double plain = advance(face, "H");
		for (int weight : new int[] { 400, 500, 650, 900 }) {
			FontFace heavier = face.at(AxisSettings.parse("wght=" + weight));
			assertEquals(plain + WIDER_AT_MOST * (weight - 400) / 500.0, advance(heavier, "H"), 0.1);
			assertEquals(advance(face, "n"), advance(heavier, "n"), 1e-9);
			assertEquals(weight, heavier.styleClass().weight());
		}
	}

	@Test
	void valuesBeyondTheRangeAreTakenToItsEnd() {
		assertEquals(face.at(AxisSettings.parse("wght=900")).settings(),
				face.at(AxisSettings.parse("wght=2000")).settings());
		assertSame(face, face.at(AxisSettings.parse("wdth=80")), "no such axis");
		assertSame(face, face.at(AxisSettings.parse("wght=400")), "the plain face");
		FontFace bold = face.at(AxisSettings.parse("wght=700"));
		assertSame(bold, bold.at(AxisSettings.parse("wght=700")));
		assertEquals(advance(face, "H"), advance(bold.at(AxisSettings.NONE), "H"), 1e-9);
	}

	@Test
	void namedInstanceLendsItsName() {
		FontFace bold = face.at(AxisSettings.parse("wght=700"));
		assertEquals("Swell Bold", bold.fullName());
		assertEquals("Swell-Bold", bold.postScriptName());
		assertEquals("Swell Regular", face.at(AxisSettings.parse("wght=701")).fullName());
		assertEquals(face.digest(), bold.digest());
	}

	@Test
	void instancesAreFoundByName() throws Exception {
		Files.write(folder.resolve("swell.ttf"), font);
		FontLibrary library = new FontLibrary(List.of(new FolderFontSource("studio", folder)));
		assertEquals(Map.of("wght", 700.0), library.find("swell bold").settings().values());
		assertTrue(library.find("Swell").settings().isEmpty());
		assertEquals(3, library.sources().get(0).fonts(Monitor.NONE).size());
		assertNotEquals(advance(library.find("Swell"), "H"), advance(library.find("Swell Bold"), "H"));
	}

	@Test
	void damagedAxesMakeAPlainFont() throws Exception {
		byte[] cut = new FontSurgery(font).with("fvar", java.util.Arrays.copyOf(fvar(), 30)).font();
		FontFace plain = FontFace.read(cut, "cut");
		assertTrue(plain.axes().isEmpty());
		assertFalse(plain.canVary());
		assertSame(plain, plain.at(AxisSettings.parse("wght=700")));
	}

	@Test
	void settingsAreReadAndWritten() {
		assertEquals("wdth=87.5,wght=700", AxisSettings.parse(" wght = 700;wdth=87.5 ").toString());
		assertTrue(AxisSettings.parse("  ").isEmpty());
		assertEquals("axis “weight” has 6 characters; a tag has four, such as wght", message("weight=3"));
		assertEquals("“wght” sets no value: write it as wght=700", message("wght"));
		assertEquals("“wght=7OO”: “7OO” is not a number", message("wght=7OO"));
		assertEquals("“wght=NaN”: “NaN” is not a number", message("wght=NaN"));
		assertEquals("axis “wght” is set twice", message("wght=3,wght=4"));
	}

	private static String message(String text) {
		return assertThrows(IllegalArgumentException.class, () -> AxisSettings.parse(text)).getMessage();
	}

	@Test
	void aRealVariableFontHasItsStopsNamed() throws Exception {
		FontFace inter = Fonts.system("truetype/inter-vf/Inter-roman.var.ttf");
		assertEquals("wght", inter.axes().stream().filter(a -> a.tag().equals("wght")).findFirst().orElseThrow().tag());
		assertFalse(inter.instances().isEmpty());
		FontFace black = inter.at(AxisSettings.parse("wght=900"));
		assertEquals(900, black.styleClass().weight());
		assertTrue(advance(black, "HHHH") > advance(inter, "HHHH"));
	}
}
