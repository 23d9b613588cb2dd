package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

import org.frisket.geometry.Monitor;
import org.junit.jupiter.api.Test;

/** Features, word space, measure and justified lines, spans, mixed directions. */
class SettingTest {

	private static final Setting TEN = Setting.ofCapHeight(10);

	private static SetText set(String text, FontFace face, Setting setting, TextSpan... spans) {
		return TextSetter.set(text, face, setting, List.of(spans), Monitor.NONE);
	}

	private static double end(SetText text, int line) {
		return text.letters().stream().filter(l -> l.line() == line).mapToDouble(l -> l.origin().x() + l.advance())
				.max().orElseThrow();
	}

	@Test
	void featureListsAreReadAndWritten() {
		assertEquals("smcp,-kern,ss01=2", FeatureList.parse("+smcp -kern; ss01 = 2").toString());
		assertEquals(FeatureList.NONE, FeatureList.parse(" , "));
		assertEquals("-liga", FeatureList.parse("liga=0").toString());
		assertEquals(1, FeatureList.parse("-kern").with(FeatureList.parse("kern")).value("kern").orElseThrow());
		assertTrue(FeatureList.parse("kern").value("liga").isEmpty());
		assertEquals("feature “smc” has 3 characters; a tag has four, such as smcp", message("kern,smc"));
		assertEquals("feature “kérn”: a tag is made of letters and digits", message("kérn"));
		assertEquals("“-ss01=2” has a sign and a value: one of them is enough", message("-ss01=2"));
		assertEquals("“ss01=x”: “x” is not a whole number from 0 to 65535", message("ss01=x"));
		assertEquals("“ss01=99999”: “99999” is not a whole number from 0 to 65535", message("ss01=99999"));
		assertEquals("feature “kern” is set twice", message("kern -kern"));
	}

	private static String message(String text) {
		return assertThrows(IllegalArgumentException.class, () -> FeatureList.parse(text)).getMessage();
	}

	@Test
	void featurePrevailsOverTheSwitch() throws Exception {
		FontFace face = Fonts.serif();
		double kerned = set("AVAVA", face, TEN).lines().get(0).width();
		double plain = set("AVAVA", face, TEN.withKerning(false)).lines().get(0).width();
		assertNotEquals(kerned, plain);
		assertEquals(plain, set("AVAVA", face, TEN.withFeatures(FeatureList.parse("-kern"))).lines().get(0).width());
		assertEquals(kerned, set("AVAVA", face, TEN.withKerning(false).withFeatures(FeatureList.parse("kern"))).lines()
				.get(0).width());
		assertEquals(kerned, set("AVAVA", face, TEN.withFeatures(FeatureList.parse("zzzz"))).lines().get(0).width());
	}

	@Test
	void featureChangesGlyphs() throws Exception {
		FontFace face = Fonts.system(Fonts.LOBSTER);
		List<Integer> usual = set("fi", face, TEN).letters().get(0).glyphs();
		List<Integer> apart = set("fi", face, TEN.withFeatures(FeatureList.parse("-liga"))).letters().get(0).glyphs();
		assertNotEquals(usual, apart);
		assertEquals(List.of(face.glyph('f')), apart);
	}

	@Test
	void wordSpacingGoesToBlanksOnly() throws Exception {
		FontFace face = Fonts.sans();
		for (double space : new double[] { 3, -0.8 }) {
			SetText plain = set("a bc d", face, TEN);
			SetText spaced = set("a bc d", face, TEN.withWordSpacing(space));
			double[] expected = { 0, space, space, 2 * space };
			for (int i = 0; i < 4; i++) {
				assertEquals(plain.letters().get(i).origin().x() + expected[i], spaced.letters().get(i).origin().x(),
						1e-9);
			}
			assertEquals(plain.lines().get(0).width() + 2 * space, spaced.lines().get(0).width(), 1e-9);
		}
	}

	@Test
	void linesAreBrokenBetweenWordsAndFilled() throws Exception {
		String text = "The ferry leaves the harbour at nine every morning but on Sundays it sleeps";
		FontFace face = Fonts.serif();
		for (double measure : new double[] { 60, 85, 120, 300 }) {
			SetText set = set(text, face, TEN.withMeasure(measure));
			List<TextLine> lines = set.lines();
			String joined = lines.stream().map(l -> text.substring(l.start(), l.end()).strip())
					.collect(Collectors.joining(" "));
			assertEquals(text, joined);
			for (int i = 0; i < lines.size(); i++) {
				TextLine line = lines.get(i);
				assertTrue(line.width() <= measure + 1e-6, "line " + i + " is " + line.width());
				assertEquals(i * TEN.lineDistance(), line.baseline(), 1e-9);
				if (i + 1 < lines.size()) {
					String next = text.substring(lines.get(i + 1).start()).split(" ")[0];
					String longer = text.substring(line.start(), line.end()).strip() + " " + next;
					assertTrue(set(longer, face, TEN).lines().get(0).width() > measure, "there was room for " + next);
				}
			}
		}
	}

	@Test
	void wordWiderThanTheMeasureStaysWhole() throws Exception {
		SetText set = set("a Harbourmaster b", Fonts.sans(), TEN.withMeasure(30));
		assertEquals(3, set.lines().size());
		assertTrue(set.lines().get(1).width() > 30);
	}

	@Test
	void lettersWithAccentsAreNotParted() throws Exception {
		String text = "e\u0301e\u0301 e\u0301e\u0301 e\u0301";
		SetText set = set(text, Fonts.symbols(), TEN.withMeasure(1));
		assertEquals(3, set.lines().size());
		for (TextLine line : set.lines()) {
			assertEquals('e', text.charAt(line.start()));
		}
	}

	@Test
	void justifiedLinesFillTheMeasureButForTheLast() throws Exception {
		FontFace face = Fonts.serif();
		Setting setting = TEN.withMeasure(90).withAlignment(Alignment.JUSTIFY);
		SetText set = set("The ferry leaves the harbour at nine every morning but on Sundays", face, setting);
		int last = set.lines().size() - 1;
		assertTrue(last >= 2);
		for (int i = 0; i < last; i++) {
			assertEquals(90, set.lines().get(i).width(), 1e-9);
			assertEquals(90, end(set, i), 1e-9);
			assertEquals(0, set.lines().get(i).left());
		}
		assertTrue(set.lines().get(last).width() < 90);
	}

	@Test
	void typedLinesAreJustifiedToTheWidestOne() throws Exception {
		SetText set = set("HARBOUR LANE\nWE FOLD\nPAPER\nI", Fonts.sans(), TEN.withAlignment(Alignment.JUSTIFY));
		double widest = set.lines().get(0).width();
		assertEquals(widest, end(set, 1), 1e-9);
		assertEquals(widest, end(set, 2), 1e-9);
		assertTrue(set.lines().get(3).width() < widest, "a letter alone has no gap to widen");
		List<Letter> paper = set.letters().stream().filter(l -> l.line() == 2).toList();
		double first = paper.get(1).origin().x() - paper.get(0).origin().x() - paper.get(0).advance();
		assertTrue(first > 1);
	}

	@Test
	void alignmentIsWithinTheMeasure() throws Exception {
		for (Alignment alignment : List.of(Alignment.LEFT, Alignment.CENTRE, Alignment.RIGHT)) {
			SetText set = set("ab", Fonts.sans(), TEN.withMeasure(200).withAlignment(alignment));
			double room = 200 - set.lines().get(0).width();
			double share = alignment == Alignment.LEFT ? 0 : alignment == Alignment.CENTRE ? 0.5 : 1;
			assertEquals(share * room, set.lines().get(0).left(), 1e-9);
		}
	}

	@Test
	void spanHasItsOwnFaceAndSize() throws Exception {
		FontFace sans = Fonts.sans();
		FontFace serif = Fonts.serif();
		SetText mixed = set("AHB", sans, TEN, new TextSpan(1, 2, java.util.Optional.of(serif),
				java.util.OptionalDouble.of(25), FeatureList.NONE));
		Letter a = mixed.letters().get(0);
		Letter h = mixed.letters().get(1);
		Letter b = mixed.letters().get(2);
		assertEquals(-1, a.span());
		assertEquals(0, h.span());
		assertEquals(10, a.outline().bounds().height(), 0.2);
		assertEquals(25, h.outline().bounds().height(), 1e-6);
		assertEquals(List.of(serif.glyph('H')), h.glyphs());
		assertEquals(serif, mixed.faceOf(h));
		assertEquals(sans, mixed.faceOf(b));
		Letter alone = set("H", serif, Setting.ofCapHeight(25)).letters().get(0);
		assertEquals(alone.advance(), h.advance(), 1e-9);
		assertEquals(a.advance() + h.advance(), b.origin().x(), 1e-9);
	}

	@Test
	void lineDistanceGoesByTheTallestOfTheLine() throws Exception {
		SetText set = set("a\nbc\nd", Fonts.sans(), TEN, TextSpan.ofCapHeight(3, 4, 30));
		assertEquals(List.of(0.0, 48.0, 64.0), set.lines().stream().map(TextLine::baseline).toList());
	}

	@Test
	void spanOfFeaturesEndsWhereItSays() throws Exception {
		FontFace face = Fonts.serif();
		SetText whole = set("AVAV", face, TEN.withKerning(false));
		SetText part = set("AVAV", face, TEN.withKerning(false),
				TextSpan.withFeatures(2, 4, FeatureList.parse("kern")));
		assertEquals(whole.letters().get(2).origin(), part.letters().get(2).origin());
		assertTrue(part.letters().get(3).origin().x() < whole.letters().get(3).origin().x());
	}

	@Test
	void overlappingSpansAreRefusedAndStrayOnesIgnored() throws Exception {
		FontFace face = Fonts.sans();
		assertThrows(IllegalArgumentException.class, () -> set("abc", face, TEN, TextSpan.ofCapHeight(0, 2, 5),
				TextSpan.ofCapHeight(1, 3, 5)));
		assertThrows(IllegalArgumentException.class, () -> TextSpan.ofCapHeight(2, 1, 5));
		assertEquals(set("abc", face, TEN).letters().size(),
				set("abc", face, TEN, TextSpan.ofCapHeight(3, 90, 5), TextSpan.ofCapHeight(1, 1, 5)).letters().size());
	}

	@Test
	void spansJoinInWords() throws Exception {
		SetText set = set("HaHb", Fonts.sans(), TEN, TextSpan.inFace(2, 4, Fonts.serif()));
		Joined joined = Joiner.join(set, 0.3, org.frisket.geometry.Tolerance.DEFAULT, Monitor.NONE);
		assertEquals(List.of(), joined.loose());
		for (int i = 1; i < 4; i++) {
			assertTrue(Areas.meet(Areas.area(joined.text().letters().get(i - 1).outline()),
					Areas.area(joined.text().letters().get(i).outline())));
		}
	}

	@Test
	void mixedDirectionsStandAsTheAlgorithmHasThem() throws Exception {
		FontFace face = Fonts.symbols();
		String hebrew = "\u05D0\u05D1\u05D2";
		SetText set = set("ab " + hebrew + " 12 cd", face, TEN);
		// from left to right: a b, then the Hebrew from its end with the number to its left, then c d
		assertEquals(List.of(0, 1, 7, 8, 5, 4, 3, 10, 11), set.letters().stream().map(Letter::start).toList());
		SetText left = set(hebrew + " ab.", face, TEN);
		assertEquals(List.of(6, 4, 5, 2, 1, 0), left.letters().stream().map(Letter::start).toList());
	}

	@Test
	void brokenParagraphOfTheOtherDirectionKeepsItsOrder() throws Exception {
		FontFace face = Fonts.symbols();
		String text = "\u05D0\u05D1 \u05D2\u05D3 abc \u05D4\u05D5 \u05D6\u05D7";
		SetText set = set(text, face, TEN.withMeasure(45).withAlignment(Alignment.JUSTIFY));
		assertTrue(set.lines().size() > 1);
		int last = set.lines().size() - 1;
		for (int line = 0; line <= last; line++) {
			assertEquals(45, end(set, line), 1e-9, "ends at the right, the last one too");
			TextLine at = set.lines().get(line);
			int number = line;
			set.letters().stream().filter(l -> l.line() == number)
					.forEach(l -> assertTrue(l.start() >= at.start() && l.end() <= at.end()));
		}
		// the first word of the paragraph stands at the right end of the first line
		assertEquals(0, set.letters().stream().filter(l -> l.line() == 0).reduce((a, b) -> b).orElseThrow().start());
	}

	@Test
	void anyTextIsSetWithoutFailing() throws Exception {
		Random random = new Random(41);
		FontFace face = Fonts.symbols();
		FontFace serif = Fonts.serif();
		String[] parts = { "a", "W", " ", "\n", "\u05D0", "\u0633", "\u0301", "\uD800", "\uD83D\uDE00", "\u0000", "\t",
				"-", "\u200D", "\u202E", "\u2067", "1", "\u0915\u094D\u0937", "\u2028" };
		for (int i = 0; i < 300; i++) {
			StringBuilder text = new StringBuilder();
			for (int n = random.nextInt(30); n > 0; n--) {
				text.append(parts[random.nextInt(parts.length)]);
			}
			int cut = random.nextInt(text.length() + 1);
			SetText set = set(text.toString(), face,
					TEN.withMeasure(random.nextInt(3) * 25).withTracking(random.nextInt(3) - 1)
							.withAlignment(Alignment.values()[random.nextInt(4)]),
					TextSpan.inFace(cut, Math.min(text.length(), cut + 5), serif));
			assertTrue(set.letters().stream().allMatch(l -> l.origin().isFinite() && l.end() > l.start()));
			StackSetter.set(text.toString(), face, TEN, Monitor.NONE);
		}
	}
}
