package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Tolerance;
import org.junit.jupiter.api.Test;

class JoinerTest {

	private static final Setting FORTY = Setting.ofCapHeight(40);
	private static final double TOUCH = 0.3;

	private static SetText set(String text, FontFace face) {
		return TextSetter.set(text, face, FORTY, Monitor.NONE);
	}

	private static Joined join(String text, FontFace face) {
		return Joiner.join(set(text, face), TOUCH, Tolerance.DEFAULT, Monitor.NONE);
	}

	private static boolean meetWhenMoved(Area left, Area right, double dx) {
		return Areas.meet(left, right.createTransformedArea(AffineTransform.getTranslateInstance(dx, 0)));
	}

	/** Neither dots nor accents nor letters that stand in several parts. */
	private static final String PLAIN = "abcdeghklmnopqrsuvwxyzABCDEFGHKLMNOPRSTUVWXYZ0123456789";

	@Test
	void moverOverlapsItsWordByTheTouch() throws Exception {
		List<FontFace> faces = List.of(Fonts.sans(), Fonts.serif(), Fonts.symbols(), Fonts.system(Fonts.DANCING),
				Fonts.system(Fonts.SLAB));
		Random random = new Random(2024);
		int measured = 0;
		for (int i = 0; i < 50; i++) {
			StringBuilder word = new StringBuilder();
			for (int k = 0; k < 5; k++) {
				word.append(PLAIN.charAt(random.nextInt(PLAIN.length())));
			}
			measured += checkTouch(word.toString(), faces.get(i % faces.size()));
		}
		assertTrue(measured > 120, "only " + measured + " pairs were measured");
	}

	/** @return how many letters were moved and therefore measured */
	private static int checkTouch(String word, FontFace face) {
		Joined joined = join(word, face);
		assertEquals(List.of(), joined.loose(), word);
		// the share of flattening, the rest for the fineness of Area
		double off = Tolerance.DEFAULT.mm() + 1e-3;
		Area before = new Area();
		int measured = 0;
		for (int i = 0; i < joined.text().letters().size(); i++) {
			Area letter = Areas.area(joined.text().letters().get(i).outline());
			String place = word + " at " + i + " in " + face;
			if (i > 0) {
				assertTrue(Areas.meet(before, letter), "joined: " + place);
				double moved = joined.shifts().get(i) - joined.shifts().get(i - 1);
				assertTrue(moved <= 0, "never apart: " + place);
				if (moved < 0) {
					assertTrue(meetWhenMoved(before, letter, TOUCH - off), "overlap is too small: " + place);
					assertFalse(meetWhenMoved(before, letter, TOUCH + off), "overlap is too big: " + place);
					measured++;
				}
			}
			before.add(letter);
		}
		return measured;
	}

	@Test
	void lettersThatOverlapAlreadyStay() throws Exception {
		FontFace face = Fonts.sans();
		SetText tight = TextSetter.set("nnn", face, FORTY.withTracking(-12), Monitor.NONE);
		Joined joined = Joiner.join(tight, TOUCH, Tolerance.DEFAULT, Monitor.NONE);
		assertEquals(List.of(0.0, 0.0, 0.0), joined.shifts());
		assertEquals(tight.letters(), joined.text().letters());
	}

	@Test
	void smallOverlapIsMadeUp() throws Exception {
		FontFace face = Fonts.sans();
		double gap = gapOfStems(set("ll", face));
		SetText tight = TextSetter.set("ll", face, FORTY.withTracking(-gap - 0.1), Monitor.NONE);
		Joined joined = Joiner.join(tight, TOUCH, Tolerance.DEFAULT, Monitor.NONE);
		assertEquals(-0.2, joined.shifts().get(1), 1e-9);
	}

	@Test
	void straightStemsOverlapExactly() throws Exception {
		Joined joined = join("lll", Fonts.sans());
		assertEquals(-TOUCH, gapOfStems(joined.text()), 1e-9);
		assertEquals(2 * joined.shifts().get(1), joined.shifts().get(2), 1e-9);
	}

	private static double gapOfStems(SetText text) {
		return text.letters().get(1).outline().bounds().minX() - text.letters().get(0).outline().bounds().maxX();
	}

	@Test
	void dotsAndAccentsGoWithTheirLetter() throws Exception {
		for (String word : List.of("ili", "j\u00EFl\u00E9", "\u00C4\u00DC\u00D6", "nq\u0308n")) {
			SetText text = set(word, Fonts.symbols());
			Joined joined = Joiner.join(text, TOUCH, Tolerance.DEFAULT, Monitor.NONE);
			for (int i = 0; i < text.letters().size(); i++) {
				Outline before = text.letters().get(i).outline();
				Outline after = joined.text().letters().get(i).outline();
				for (int k = 0; k < before.contours().size(); k++) {
					assertEquals(before.contours().get(k).start().x() + joined.shifts().get(i),
							after.contours().get(k).start().x(), 1e-9);
				}
			}
		}
	}

	@Test
	void dotIsNotWhatTheNeighbourIsJoinedTo() throws Exception {
		// the hook of f reaches the dot of i long before its stem
		Joined joined = Joiner.join(TextSetter.set("fi", Fonts.serif(), FORTY.withLigatures(false), Monitor.NONE),
				TOUCH, Tolerance.DEFAULT, Monitor.NONE);
		Area f = Areas.area(joined.text().letters().get(0).outline());
		Outline i = joined.text().letters().get(1).outline();
		Contour stem = i.contours().get(0).bounds().height() > i.contours().get(1).bounds().height()
				? i.contours().get(0) : i.contours().get(1);
		assertTrue(Areas.meet(f, Areas.area(Outline.of(stem))));
	}

	@Test
	void markThatStaysApartIsReported() throws Exception {
		assertEquals(List.of(1), join("nin", Fonts.sans()).detached());
		assertEquals(List.of(), join("nun", Fonts.sans()).detached());
	}

	@Test
	void wordsKeepTheirDistance() throws Exception {
		SetText text = set("ab cd", Fonts.sans());
		Joined joined = Joiner.join(text, TOUCH, Tolerance.DEFAULT, Monitor.NONE);
		assertEquals(joined.shifts().get(1), joined.shifts().get(2));
		assertTrue(joined.shifts().get(3) < joined.shifts().get(2));
		assertEquals(text.lines().get(0).width() + joined.shifts().get(3), joined.text().lines().get(0).width(), 1e-9);
	}

	@Test
	void wordsAreJoinedWhenAsked() throws Exception {
		Joined joined = Joiner.join(set("ab cd", Fonts.sans()), TOUCH, true, Tolerance.DEFAULT, Monitor.NONE);
		List<Letter> letters = joined.text().letters();
		assertTrue(Areas.meet(Areas.area(letters.get(1).outline()), Areas.area(letters.get(2).outline())));
	}

	@Test
	void letterThatSharesNoRowsIsLoose() throws Exception {
		Joined joined = join("n_s", Fonts.sans());
		assertEquals(List.of(1), joined.loose());
		assertEquals(joined.shifts().get(0), joined.shifts().get(1), "it keeps its distance");
		assertTrue(Areas.meet(Areas.area(joined.text().letters().get(0).outline()),
				Areas.area(joined.text().letters().get(2).outline())), "the others meet above it");
	}

	@Test
	void ofTwoThatDoNotMeetTheSmallerIsLoose() throws Exception {
		assertEquals(List.of(0), join("_no", Fonts.sans()).loose());
		assertEquals(List.of(2), join("no_", Fonts.sans()).loose());
		assertEquals(List.of(0), join(".-", Fonts.sans()).loose());
	}

	@Test
	void markAboveItsNeighbourDoesNotSlipPastIt() throws Exception {
		// in this font the apostrophe stands above n but beside d
		SetText text = set("don't", Fonts.system(Fonts.DANCING));
		Joined joined = Joiner.join(text, TOUCH, Tolerance.DEFAULT, Monitor.NONE);
		assertEquals(List.of(3), joined.loose());
		assertEquals(joined.shifts().get(2), joined.shifts().get(3));
	}

	@Test
	void partsThatStandBesideEachOtherAreAllBody() throws Exception {
		// the rings of the per cent sign stand beside its stroke; the first letter meets the first ring
		Joined joined = join("0%0", Fonts.serif());
		List<Letter> letters = joined.text().letters();
		assertEquals(List.of(), joined.detached());
		assertEquals(-TOUCH, letters.get(1).outline().bounds().minX() - letters.get(0).outline().bounds().maxX(), 0.7);
		assertEquals(-TOUCH, letters.get(2).outline().bounds().minX() - letters.get(1).outline().bounds().maxX(), 0.7);
	}

	@Test
	void quotationMarkIsJoinedWhereItReachesDownFarEnough() throws Exception {
		assertEquals(List.of(), join("\u201Cno", Fonts.sans()).loose());
		assertEquals(List.of(), join("n\u2019s", Fonts.sans()).loose());
	}

	@Test
	void laterLetterMeetsTheOneThatReachesPastItsNeighbour() throws Exception {
		// the hyphen slips over the foot of L; o then meets the foot first
		Joined joined = join("L-o", Fonts.sans());
		List<Area> areas = new ArrayList<>();
		joined.text().letters().forEach(l -> areas.add(Areas.area(l.outline())));
		assertEquals(List.of(), joined.loose());
		assertTrue(Areas.meet(areas.get(0), areas.get(1)));
		assertTrue(Areas.meet(areas.get(0), areas.get(2)));
		assertFalse(meetWhenMoved(areas.get(0), areas.get(2), TOUCH + 0.021));
	}

	@Test
	void strokesThinnerThanTheTouchStillMeet() throws Exception {
		SetText text = TextSetter.set("lll", Fonts.sans(), Setting.ofCapHeight(1), Monitor.NONE);
		Joined joined = Joiner.join(text, 0.3, new Tolerance(0.002), Monitor.NONE);
		assertEquals(List.of(), joined.loose());
		for (int i = 1; i < 3; i++) {
			assertTrue(Areas.meet(Areas.area(joined.text().letters().get(i - 1).outline()),
					Areas.area(joined.text().letters().get(i).outline())));
			assertTrue(joined.text().letters().get(i).outline().bounds().minX() > joined.text().letters().get(i - 1)
					.outline().bounds().minX(), "not passed through");
		}
	}

	@Test
	void linesKeepTheirAlignment() throws Exception {
		FontFace face = Fonts.sans();
		for (Alignment alignment : List.of(Alignment.LEFT, Alignment.CENTRE, Alignment.RIGHT)) {
			SetText text = TextSetter.set("minimum\nlow", face, FORTY.withAlignment(alignment), Monitor.NONE);
			SetText joined = Joiner.join(text, TOUCH, Tolerance.DEFAULT, Monitor.NONE).text();
			TextLine wide = joined.lines().get(0);
			TextLine narrow = joined.lines().get(1);
			assertEquals(0, wide.left(), 1e-12);
			double room = wide.width() - narrow.width();
			assertTrue(room > 0);
			double share = alignment == Alignment.LEFT ? 0 : alignment == Alignment.CENTRE ? 0.5 : 1;
			assertEquals(share * room, narrow.left(), 1e-9);
			assertEquals(narrow.left(), joined.letters().get(7).origin().x(), 1e-9);
		}
	}

	@Test
	void justifiedLinesStayJustified() throws Exception {
		SetText text = TextSetter.set("minimum of a line\nlow a b", Fonts.sans(),
				FORTY.withAlignment(Alignment.JUSTIFY), Monitor.NONE);
		SetText joined = Joiner.join(text, TOUCH, Tolerance.DEFAULT, Monitor.NONE).text();
		for (int line = 0; line < 2; line++) {
			assertEquals(text.lines().get(0).width(), joined.lines().get(line).width(), 1e-9);
			int number = line;
			Letter last = joined.letters().stream().filter(l -> l.line() == number).reduce((a, b) -> b).orElseThrow();
			assertEquals(joined.lines().get(line).width(), last.origin().x() + last.advance(), 1e-9);
		}
		assertTrue(Areas.meet(Areas.area(joined.letters().get(0).outline()),
				Areas.area(joined.letters().get(1).outline())));
	}

	@Test
	void arabicIsJoinedAlongItsLine() throws Exception {
		Joined joined = join("\u062F\u0631\u0648", Fonts.symbols());
		List<Letter> letters = joined.text().letters();
		assertEquals(List.of(), joined.loose());
		for (int i = 1; i < letters.size(); i++) {
			assertTrue(Areas.meet(Areas.area(letters.get(i - 1).outline()), Areas.area(letters.get(i).outline())));
		}
	}

	@Test
	void senselessTouchIsRefused() throws Exception {
		SetText text = set("ab", Fonts.sans());
		for (double touch : new double[] { 0, -0.1, Double.NaN, Double.POSITIVE_INFINITY }) {
			assertEquals("touch must be positive and finite, got " + touch, assertThrows(
					IllegalArgumentException.class,
					() -> Joiner.join(text, touch, Tolerance.DEFAULT, Monitor.NONE)).getMessage());
		}
	}

	@Test
	void emptyTextIsJoinedToNothing() throws Exception {
		assertEquals(List.of(), join(" \n ", Fonts.sans()).shifts());
	}

	@Test
	void longTextIsJoinedTheSameWayTwice() throws Exception {
		SetText text = set("Harbour Lane office fjord\n".repeat(40), Fonts.system(Fonts.DANCING));
		assertEquals(Joiner.join(text, TOUCH, Tolerance.DEFAULT, Monitor.NONE).text().letters(),
				Joiner.join(text, TOUCH, Tolerance.DEFAULT, Monitor.NONE).text().letters());
	}
}
