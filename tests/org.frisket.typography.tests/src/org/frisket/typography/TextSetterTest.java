package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextSetterTest {

	private static final Setting FORTY = Setting.ofCapHeight(40);

	private static SetText set(String text, FontFace face, Setting setting) {
		return TextSetter.set(text, face, setting, Monitor.NONE);
	}

	private static double width(String text, FontFace face, Setting setting) {
		return set(text, face, setting).lines().get(0).width();
	}

	@ParameterizedTest
	@ValueSource(strings = { Fonts.DEJAVU_SANS, Fonts.DANCING, Fonts.LOBSTER, Fonts.KAUSHAN, Fonts.SLAB, Fonts.BEBAS,
			Fonts.SYMBOLA })
	void capitalHIsAsHighAsAsked(String font) throws Exception {
		assertEquals(40, set("H", Fonts.system(font), FORTY).bounds().height(), 1e-9);
	}

	@Test
	void firstBaselineIsAtZero() throws Exception {
		SetText text = set("HH\nH", Fonts.sans(), FORTY);
		assertEquals(0, text.letters().get(0).outline().bounds().maxY(), 1e-12);
		assertEquals(64, text.letters().get(2).outline().bounds().maxY(), 1e-9);
		assertEquals(64, text.setting().lineDistance(), 1e-12);
		assertEquals(1, text.letters().get(2).line());
	}

	@ParameterizedTest
	@ValueSource(strings = { Fonts.DEJAVU_SANS, Fonts.DEJAVU_SERIF, Fonts.DANCING, Fonts.SLAB, Fonts.BEBAS,
			Fonts.LOBSTER })
	void areaAgreesWithJavaRuntime(String font) throws Exception {
		FontFace face = Fonts.system(font);
		String words = "Harbour Lane & Quay 1884";
		SetText text = set(words, face, FORTY.withLigatures(false));
		double area = text.letters().stream().mapToDouble(
				l -> Math.abs(l.outline().contours().stream().mapToDouble(Contour::signedArea).sum())).sum();
		Font awt = Font.createFont(Font.TRUETYPE_FONT, Fonts.path(font).toFile())
				.deriveFont((float) face.unitsPerEm());
		double expected = 0;
		for (char c : words.toCharArray()) {
			expected += Areas.size(awt.createGlyphVector(new FontRenderContext(null, true, true), "" + c)
					.getGlyphOutline(0));
		}
		assertEquals(expected * text.scale() * text.scale(), area, 2e-4 * area);
	}

	@Test
	void kerningDrawsPairTogether() throws Exception {
		FontFace face = Fonts.sans();
		double kerned = width("AV", face, FORTY);
		double plain = width("AV", face, FORTY.withKerning(false));
		assertTrue(kerned < plain - 1, kerned + " against " + plain);
		assertEquals(plain, width("A", face, FORTY) + width("V", face, FORTY), 1e-9);
	}

	@Test
	void ligatureIsOneLetterUnlessTurnedOff() throws Exception {
		FontFace face = Fonts.system(Fonts.DEJAVU_SERIF);
		SetText ligature = set("of fire", face, FORTY);
		assertEquals(List.of("o", "f", "fi", "r", "e"),
				ligature.letters().stream().map(ligature::characters).toList());
		SetText single = set("of fire", face, FORTY.withLigatures(false));
		assertEquals(6, single.letters().size());
	}

	@Test
	void accentBelongsToItsLetter() throws Exception {
		// q has no precomposed form with a diaeresis
		SetText text = set("aq\u0308b", Fonts.symbols(), FORTY);
		assertEquals(List.of("a", "q\u0308", "b"), text.letters().stream().map(text::characters).toList());
		Letter q = text.letters().get(1);
		assertEquals(2, q.glyphs().size());
		double top = set("q", Fonts.symbols(), FORTY).bounds().minY();
		assertTrue(q.outline().bounds().minY() < top - 3, "the dots stand above the letter");
	}

	@Test
	void missingCharacterIsReportedAndLeavesNoBox() throws Exception {
		SetText text = set("a\u2740b \uD83D\uDE00", Fonts.sans(), FORTY);
		assertEquals(List.of(new MissingGlyph(0x2740, 1), new MissingGlyph(0x1F600, 4)), text.missing());
		assertEquals(List.of("a", "b"), text.letters().stream().map(text::characters).toList());
		assertEquals(width("ab", Fonts.sans(), FORTY), width("a\u2740b", Fonts.sans(), FORTY), 1e-9, "nor a gap");
	}

	@Test
	void unpairedSurrogateIsReported() throws Exception {
		SetText text = set("x\uD83Dy\uDE00", Fonts.symbols(), FORTY);
		assertEquals(List.of(new MissingGlyph(0xD83D, 1), new MissingGlyph(0xDE00, 3)), text.missing());
		assertEquals("U+D83D", text.missing().get(0).label());
		assertEquals(2, text.letters().size());
	}

	@Test
	void letterIsSetWithoutItsMissingAccent() throws Exception {
		FontFace face = Fonts.system(Fonts.BEBAS);
		int accent = 0x0332;
		assertFalse(face.covers(accent));
		SetText text = set("A" + Character.toString(accent) + "B", face, FORTY);
		assertEquals(List.of(new MissingGlyph(accent, 1)), text.missing());
		assertEquals(2, text.letters().size());
	}

	@Test
	void accentOfMissingLetterIsReportedToo() throws Exception {
		SetText text = set("\u2740\u0301", Fonts.sans(), FORTY);
		assertEquals(List.of(0x2740, 0x0301), text.missing().stream().map(MissingGlyph::codePoint).toList());
		assertTrue(text.letters().isEmpty());
		assertTrue(text.outline().isEmpty() && text.bounds().isEmpty());
	}

	@Test
	void everyKindOfLineBreakEndsALine() throws Exception {
		SetText text = set("a\nb\r\nc\rd\u2028e\n\nf\n", Fonts.sans(), FORTY);
		assertEquals(8, text.lines().size());
		assertEquals(List.of(0, 1, 2, 3, 4, 6), text.letters().stream().map(Letter::line).toList());
		assertEquals(List.of("a", "b", "c", "d", "e", "f"), text.letters().stream().map(text::characters).toList());
		assertEquals(List.of(), text.missing());
	}

	@Test
	void controlCharactersAreBlanks() throws Exception {
		FontFace face = Fonts.sans();
		SetText text = set("a\tb\u0007c", face, FORTY);
		assertEquals(width("a b c", face, FORTY), text.lines().get(0).width(), 1e-12);
		assertEquals(List.of(0, 1, 2), text.letters().stream().map(Letter::word).toList());
		assertEquals(List.of(), text.missing());
	}

	@Test
	void blanksAtTheEndHaveNoEffect() throws Exception {
		FontFace face = Fonts.sans();
		assertEquals(width("ab", face, FORTY), width("ab  \t ", face, FORTY));
	}

	@Test
	void linesAreAligned() throws Exception {
		FontFace face = Fonts.sans();
		SetText left = set("wide line\nI", face, FORTY);
		SetText centre = set("wide line\nI", face, FORTY.withAlignment(Alignment.CENTRE));
		SetText right = set("wide line\nI", face, FORTY.withAlignment(Alignment.RIGHT));
		double room = left.lines().get(0).width() - left.lines().get(1).width();
		double x = lastX(left);
		assertEquals(0, left.lines().get(1).left());
		assertEquals(x + room / 2, lastX(centre), 1e-9);
		assertEquals(x + room, lastX(right), 1e-9);
		assertEquals(room, right.lines().get(1).left(), 1e-9);
	}

	private static double lastX(SetText text) {
		return text.letters().get(text.letters().size() - 1).outline().bounds().minX();
	}

	@Test
	void trackingStandsBetweenLettersOnly() throws Exception {
		FontFace face = Fonts.sans();
		Setting tracked = FORTY.withTracking(2).withKerning(false);
		Setting plain = FORTY.withKerning(false);
		assertEquals(width("abc", face, plain) + 4, width("abc", face, tracked), 1e-9);
		assertEquals(width("a", face, plain), width("a", face, tracked), 1e-9);
		assertEquals(0, set("abc", face, tracked).letters().get(0).origin().x());
	}

	@Test
	void hebrewRunsToTheLeft() throws Exception {
		SetText text = set("\u05E9\u05DC\u05D5\u05DD abc", Fonts.symbols(), FORTY);
		assertEquals("abc\u05DD\u05D5\u05DC\u05E9",
				String.join("", text.letters().stream().map(text::characters).toList()));
		double before = Double.NEGATIVE_INFINITY;
		for (Letter letter : text.letters()) {
			assertTrue(letter.origin().x() > before);
			before = letter.origin().x();
		}
	}

	@Test
	void arabicLettersAreJoined() throws Exception {
		FontFace face = Fonts.symbols();
		SetText text = set("\u0628\u0628\u0628", face, FORTY);
		assertEquals(3, text.letters().size());
		assertEquals(3, text.letters().stream().map(Letter::glyphs).distinct().count(),
				"final, medial and initial form differ");
	}

	@Test
	void textRangesCoverTheLetters() throws Exception {
		String words = "Office fjords, 2 wives & \u00E9tude";
		SetText text = set(words, Fonts.system(Fonts.DEJAVU_SERIF), FORTY);
		assertEquals(words.replace(" ", ""),
				String.join("", text.letters().stream().map(text::characters).toList()));
	}

	@Test
	void tenThousandCharactersAreSet() throws Exception {
		SetText text = set("ab cde fgh ".repeat(910).substring(0, 10_000), Fonts.sans(), FORTY);
		assertEquals(7273, text.letters().size());
	}

	@Test
	void longerTextIsRefused() throws Exception {
		FontFace face = Fonts.sans();
		assertEquals("text has 20001 characters; at most 20000 can be set at a time",
				assertThrows(IllegalArgumentException.class, () -> set("x".repeat(20_001), face, FORTY)).getMessage());
	}

	@Test
	void senselessSettingIsRefusedByName() {
		for (double height : new double[] { 0, -1, Double.NaN, Double.POSITIVE_INFINITY }) {
			assertEquals("cap height must be positive and finite, got " + height,
					assertThrows(IllegalArgumentException.class, () -> Setting.ofCapHeight(height)).getMessage());
		}
		assertThrows(IllegalArgumentException.class, () -> FORTY.withLineSpacing(0));
		assertThrows(IllegalArgumentException.class, () -> FORTY.withTracking(Double.NaN));
	}

	@Test
	void emptyTextHasOneEmptyLine() throws Exception {
		SetText text = set("", Fonts.sans(), FORTY);
		assertEquals(1, text.lines().size());
		assertTrue(text.letters().isEmpty() && text.missing().isEmpty());
	}

	@Test
	void cancelIsHeard() throws Exception {
		FontFace face = Fonts.sans();
		assertThrows(CancellationException.class, () -> TextSetter.set("a\nb", face, FORTY, () -> true));
	}

	@Test
	void sameInputGivesSameOutput() throws Exception {
		FontFace face = Fonts.serif();
		assertEquals(set("AVATAR office", face, FORTY).letters(),
				set("AVATAR office", Fonts.serif(), FORTY).letters());
		assertEquals(face.digest(), Fonts.serif().digest());
	}
}
