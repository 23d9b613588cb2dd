package org.frisket.typography.stroke;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.typography.Alignment;
import org.frisket.typography.FontFace;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.index.FontIndex;
import org.frisket.typography.index.FontIndexer;
import org.frisket.typography.index.FontQuery;
import org.frisket.typography.layout.Arc;
import org.frisket.typography.layout.ArcLayout;
import org.frisket.typography.source.FolderFontSource;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StrokeFontTest {

	/** The letter H of the simplex Roman, as articles on the format show it (source S36 of the check values). */
	private static final String CAPITAL_H = "    8  9MWOMOV RUMUV ROQUQ";

	private static final String SVG = """
			<?xml version="1.0"?>
			<svg xmlns="http://www.w3.org/2000/svg"><defs><font id="pen" horiz-adv-x="500">
			<font-face font-family="Quill" units-per-em="1000" cap-height="650"/>
			<missing-glyph d="M0 0H9"/>
			<glyph unicode="H" horiz-adv-x="600" d="M50 0V700M450 0V700M50 350H450"/>
			<glyph unicode="o" d="M50 200C50 0 350 0 350 200C350 400 50 400 50 200Z"/>
			<glyph unicode="f" d="M0 0V700"/><glyph unicode="ff" d="M0 0V700M100 0V700"/><glyph unicode=" " horiz-adv-x="250"/>
			<glyph glyph-name="nothing"/></font></defs></svg>
			""";

	private static StrokeFont hershey(String file) throws UnreadableFontException {
		return HersheyReader.read(file.getBytes(StandardCharsets.ISO_8859_1), "pen");
	}

	private static StrokeFont svg(String file) throws UnreadableFontException {
		return SvgFontReader.read(file.getBytes(StandardCharsets.UTF_8), "quill.svg");
	}

	private static FontFace face(String file) throws UnreadableFontException {
		return FontFace.read(file.getBytes(StandardCharsets.UTF_8), "/fonts/quill.svg");
	}

	/** 95 blanks but for the H. */
	private static String ascii() {
		StringBuilder file = new StringBuilder();
		for (int c = ' '; c < ' ' + 95; c++) {
			file.append(c == 'H' ? CAPITAL_H : "12345  1JZ").append('\n');
		}
		return file.toString();
	}

	private static Contour line(double x1, double y1, double x2, double y2) {
		return Contour.open(List.of(new Line(new Point(x1, y1), new Point(x2, y2))));
	}

	@Test
	void recordIsReadAsPublished() throws Exception {
		StrokeGlyph glyph = hershey(CAPITAL_H).glyphs().get("\uE000");
		// left edge at -5, lowest point at 4: both have become 0
		assertEquals(List.of(line(2, -9, 2, 0), line(8, -9, 8, 0), line(2, -5, 8, -5)), glyph.strokes().contours());
		assertEquals(10, glyph.advance());
		assertEquals(9, hershey(CAPITAL_H).capHeight());
		assertTrue(hershey(CAPITAL_H).notice().contains("A. V. Hershey"));
	}

	@Test
	void recordsOfAsciiHaveTheirCharacters() throws Exception {
		StrokeFont font = hershey(ascii());
		assertEquals(3, font.glyphs().get("H").strokes().contours().size());
		assertEquals(16, font.glyphs().get(" ").advance());
		assertFalse(font.glyphs().containsKey("\u00E9"));
	}

	@Test
	void recordMayGoOnInTheNextLine() throws Exception {
		StrokeFont whole = hershey(CAPITAL_H);
		assertEquals(whole, hershey(CAPITAL_H.substring(0, 16) + "\r\n" + CAPITAL_H.substring(16) + "\r\n"));
	}

	@Test
	void brokenRecordsAreNamed() {
		assertReason("the record in line 2 is cut off: 9 pairs of coordinates are said to be in it",
				CAPITAL_H + "\n" + CAPITAL_H.substring(0, 15));
		assertReason("line 1 is no record of a stroke font", "Dear customer");
		assertReason("line 1 is no record of a stroke font", "    8  0MW");
		assertReason("it holds no glyphs", "\n\n");
	}

	private static void assertReason(String reason, String file) {
		assertEquals(reason, assertThrows(UnreadableFontException.class, () -> hershey(file)).reason());
	}

	@Test
	void fontOfTheSystemIsRead() throws Exception {
		Path file = Path.of("/usr/share/hershey-fonts/futural.jhf");
		assumeTrue(Files.exists(file), "hershey-fonts-data is not installed");
		StrokeFont font = HersheyReader.read(Files.readAllBytes(file), "Futural");
		assertEquals(96, font.glyphs().size());
		assertEquals(21, font.capHeight());
		assertEquals(18, font.glyphs().get("A").advance());
		// Debian's hershey-fonts-data 0.1: 96 records each in the order of ASCII, on one line
		for (String name : List.of("futural", "rowmans", "scripts", "cursive", "symbolic")) {
			FontFace face = FontFace.read(file.resolveSibling(name + ".jhf"));
			assertEquals(97, face.glyphCount(), name);
			assertTrue(face.covers('A'), name);
			assertEquals(name, face.family());
			assertTrue(face.licence().contains("James Hurt"), name);
		}
	}

	@Test
	void svgFontIsRead() throws Exception {
		StrokeFont font = svg(SVG);
		assertEquals("Quill", font.name());
		assertEquals(700, font.capHeight(), 1e-9);
		assertEquals(new Bounds(50, -700, 450, 0), font.glyphs().get("H").strokes().bounds());
		assertEquals(600, font.glyphs().get("H").advance());
		assertEquals(500, font.glyphs().get("o").advance());
		assertTrue(font.glyphs().get("o").strokes().contours().get(0).isClosed());
		assertFalse(font.glyphs().get("H").strokes().contours().get(0).isClosed());
		assertEquals(650, svg(SVG.replace("unicode=\"H\"", "unicode=\"I\"")).capHeight(), 1e-9);
	}

	@Test
	void brokenSvgFontHasAReason() {
		assertEquals("it holds no font", reason("<svg/>"));
		assertEquals("it holds no glyphs", reason("<font/>"));
		assertTrue(reason(SVG.replace("</defs>", "")).startsWith("it is not well formed in line"));
		assertEquals("horiz-adv-x is “wide” in line 5", reason(SVG.replace("\"600\"", "\"wide\"")));
		assertTrue(reason(SVG.replace("M50 0V700M450", "M50 0V7x0M450"))
				.startsWith("the glyph of “H” in line 5 has a path that cannot be read"));
		assertTrue(reason("<!DOCTYPE svg [<!ENTITY e SYSTEM \"file:///etc/passwd\">]><svg>&e;</svg>").length() > 0);
	}

	private static String reason(String file) {
		return assertThrows(UnreadableFontException.class, () -> svg(file)).reason();
	}

	@Test
	void lettersAreSetByTheirCapHeight() throws Exception {
		Setting setting = Setting.ofCapHeight(14).withTracking(1).withWordSpacing(2);
		SetText text = TextSetter.set("HH H\nHo", face(SVG), setting, Monitor.NONE);
		assertEquals(5, text.letters().size());
		assertEquals(14, text.letters().get(0).outline().bounds().height(), 1e-9);
		// 600 units are 12 mm, a blank of 250 is 5 mm and 2 more
		assertEquals(List.of(0.0, 13.0, 34.0, 0.0, 13.0),
				text.letters().stream().map(l -> Math.round(l.origin().x() * 1e9) / 1e9).toList());
		assertEquals(List.of(0, 0, 1, 0, 0), text.letters().stream().map(Letter::word).toList());
		assertEquals(setting.lineDistance(), text.letters().get(3).origin().y(), 1e-9);
		assertEquals(46, text.lines().get(0).width(), 1e-9);
		assertEquals(13, text.outline().contours().size());
	}

	@Test
	void longestSequenceIsTakenAndWhatIsMissingTold() throws Exception {
		SetText text = TextSetter.set("HffxH ", face(SVG), Setting.ofCapHeight(14), Monitor.NONE);
		assertEquals(List.of(0, 1, 4), text.letters().stream().map(Letter::start).toList());
		assertEquals(3, text.letters().get(1).end());
		assertEquals(3, text.missing().get(0).index());
		assertEquals(12 + 10 + 12, text.lines().get(0).width(), 1e-9);
	}

	@Test
	void alignmentAndArcsWorkAsForOutlines() throws Exception {
		Setting setting = Setting.ofCapHeight(14).withAlignment(Alignment.CENTRE);
		SetText text = TextSetter.set("HHH\nH", face(SVG), setting, Monitor.NONE);
		assertEquals(12, text.letters().get(3).origin().x(), 1e-9);
		List<Letter> bent = ArcLayout.bend(text.letters(), text.lines(), setting, Arc.over(100)).letters();
		assertEquals(Math.hypot(100, 6), bent.get(1).origin().length(), 1e-9);
		assertFalse(bent.get(0).outline().contours().get(0).isClosed());
	}

	@Test
	void damagedFilesEndWithAReasonOrAFont() {
		Random random = new Random(9);
		for (int i = 0; i < 2_000; i++) {
			byte[] file = (i % 2 == 0 ? ascii() : SVG).getBytes(StandardCharsets.UTF_8);
			for (int n = 1 + random.nextInt(6); n > 0; n--) {
				file[random.nextInt(file.length)] = (byte) (random.nextInt(3) > 0 ? 32 + random.nextInt(96)
						: random.nextInt(256));
			}
			try {
				FontFace face = FontFace.read(file, "damaged");
				SetText text = TextSetter.set("Ho ff", face, Setting.ofCapHeight(5), Monitor.NONE);
				assertTrue(text.letters().stream().allMatch(l -> l.origin().isFinite()));
			} catch (UnreadableFontException refused) {
				assertTrue(!refused.reason().isEmpty());
			}
		}
	}

	@Test
	void faceOfLinesIsLikeAnyOther() throws Exception {
		FontFace face = face(SVG);
		assertTrue(face.isStroke());
		assertEquals("Quill", face.fullName());
		assertEquals(700, face.capHeight(), 1e-9);
		assertTrue(face.covers('H') && !face.covers('x'));
		assertEquals(600, face.advance(face.glyph('H')), 1e-9);
		assertEquals(List.of((int) 'H'), face.charactersOfGlyphs().get(face.glyph('H')));
		assertEquals(Integer.valueOf(4), face.codePoints().size());
		assertEquals(FontFace.read(SVG.getBytes(StandardCharsets.UTF_8), "other").digest(), face.digest());
		assertEquals("quill", face(ascii()).family(), "a file that says no name is its font's name");
		assertEquals(HersheyReader.NOTICE, face(ascii()).licence());
		assertEquals("/fonts/quill.svg", assertThrows(UnreadableFontException.class, () -> face("<svg/>")).font());
	}

	@Test
	void ligaturesCanBeSwitchedOff() throws Exception {
		SetText text = TextSetter.set("ff", face(SVG), Setting.ofCapHeight(14).withLigatures(false), Monitor.NONE);
		assertEquals(2, text.letters().size());
	}

	@Test
	void folderOfFontsListsThemAndFindsThemByFileName(@TempDir Path folder) throws Exception {
		Files.writeString(folder.resolve("quill.svg"), SVG);
		Files.writeString(folder.resolve("pen.jhf"), ascii());
		Files.writeString(folder.resolve("drawing.svg"), "<svg><path d='M0 0H9'/></svg>");
		Files.writeString(folder.resolve("broken.jhf"), "Dear customer");
		FolderFontSource source = new FolderFontSource("studio", folder);
		assertEquals(List.of("pen", "Quill"), source.fonts(Monitor.NONE).stream().map(FontEntry::family).toList());
		assertEquals(List.of("line 1 is no record of a stroke font"),
				source.broken(Monitor.NONE).stream().map(UnreadableFontException::reason).toList());
		FontLibrary library = new FontLibrary(List.of(source));
		assertTrue(library.find("pen.jhf").isStroke());
		assertTrue(library.find("quill").isStroke());
		assertTrue(library.findByDigest(face(ascii()).digest()).isStroke());
		FontIndex index = FontIndexer.rememberingIn(folder.resolve("memory")).index(library.sources(), Monitor.NONE);
		FontIndex again = FontIndexer.rememberingIn(folder.resolve("memory")).index(library.sources(), Monitor.NONE);
		for (FontIndex each : List.of(index, again)) {
			assertTrue(each.search(FontQuery.named("pen")).get(0).face().stroke());
			assertEquals(HersheyReader.NOTICE, each.search(FontQuery.named("pen")).get(0).face().licence());
		}
	}
}
