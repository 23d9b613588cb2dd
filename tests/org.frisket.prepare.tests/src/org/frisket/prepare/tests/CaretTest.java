package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Alignment;
import org.frisket.model.Flow;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Nudge;
import org.frisket.model.Wording;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.wording.CaretPlace;
import org.frisket.prepare.wording.LetterPlace;
import org.junit.jupiter.api.Test;

/** Places of the caret; advances from Liberation Sans, which has those of Helvetica: H 0.722 em, blank 0.278 em. */
class CaretTest {

	private final JobPreparer preparer = new JobPreparer(FontLibraries.installed());
	private final Job job = Jobs.create("job", "Carets");
	private final Wording wording = Jobs.addWording(Jobs.addLayer(job, "Wording"), "", 10);

	private List<Point> carets(String text) {
		wording.setText(text);
		wording.setFont(Jobs.font("Liberation Sans", "Regular", null, null));
		return preparer.carets(wording, Tolerance.DEFAULT, Monitor.NONE).stream().map(CaretPlace::foot).toList();
	}

	@Test
	void emptyTextHasOnePlace() {
		assertEquals(List.of(Point.ORIGIN), carets(""));
	}

	@Test
	void caretStandsBeforeEachLetterAndAfterTheLast() {
		List<Point> places = carets("HH H ");
		assertEquals(6, places.size());
		double h = places.get(1).x();
		// a capital H is 1409 of 2048 units high in this font, so 10 mm of it make an em of 14.535 mm
		assertEquals(0.722 * 14.535, h, 0.005);
		assertEquals(2 * h, places.get(2).x(), 1e-9);
		double blank = places.get(3).x() - places.get(2).x();
		assertEquals(0.278 / 0.722, blank / h, 0.01);
		assertEquals(3 * h + blank, places.get(4).x(), 1e-9);
		assertEquals(3 * h + 2 * blank, places.get(5).x(), 1e-9);
	}

	@Test
	void linesStandBelowEachOther() {
		wording.setAlignment(Alignment.RIGHT);
		List<Point> places = carets("HHH\nH\n");
		assertEquals(7, places.size());
		assertEquals(0, places.get(3).y());
		assertEquals(16, places.get(4).y(), 1e-9);
		assertEquals(places.get(2).x(), places.get(4).x(), 1e-9);
		assertEquals(places.get(3).x(), places.get(5).x(), 1e-9);
		assertEquals(32, places.get(6).y(), 1e-9);
		assertEquals(places.get(3).x(), places.get(6).x(), 1e-9);
	}

	@Test
	void doubleLineEndHasOnePlaceTwice() {
		List<Point> places = carets("H\r\nH");
		assertEquals(5, places.size());
		assertEquals(places.get(1), places.get(2));
		assertEquals(0, places.get(3).x());
	}

	@Test
	void joinedLettersStandCloser() {
		double apart = carets("lll").get(3).x();
		wording.setJoined(true);
		wording.setTouch(0.3);
		List<Point> joined = carets("lll");
		assertTrue(joined.get(3).x() < apart, joined + " " + apart);
		assertTrue(joined.get(1).x() < joined.get(2).x());
	}

	@Test
	void caretsStandUprightOnStraightLines() {
		carets("HH\nH");
		for (CaretPlace place : preparer.carets(wording, Tolerance.DEFAULT, Monitor.NONE)) {
			assertEquals(new Point(0, -1), place.up());
		}
	}

	/** All carets of a line on a circle point away from its middle, or to it where the text runs inward. */
	@Test
	void caretsTurnWithTheirLineOnAnArc() {
		wording.setFlow(Flow.ARC);
		wording.setArcRadius(30);
		for (boolean inward : new boolean[] { false, true }) {
			wording.setArcInward(inward);
			carets("HHHHH");
			List<CaretPlace> places = preparer.carets(wording, Tolerance.DEFAULT, Monitor.NONE);
			assertEquals(6, places.size());
			CaretPlace first = places.get(0);
			CaretPlace last = places.get(5);
			assertTrue(Math.abs(first.up().cross(last.up())) > 0.1, places.toString());
			double radius = first.foot().distance(last.foot()) / first.up().distance(last.up());
			Point middle = first.above(inward ? radius : -radius);
			for (CaretPlace place : places) {
				assertEquals(1, place.up().length(), 1e-9);
				assertEquals(0, place.above(inward ? radius : -radius).distance(middle), 1e-6);
				assertEquals(0, place.seen(place.above(3)).distance(new Point(0, -3)), 1e-9);
			}
			// what is read next is at the right of a caret
			assertTrue(first.seen(places.get(1).foot()).x() > 0);
		}
	}

	@Test
	void missingFontHasNoPlaces() {
		carets("H");
		wording.setFont(Jobs.font("Harbour Lane Grotesk", "Regular", null, null));
		assertEquals(List.of(), preparer.carets(wording, Tolerance.DEFAULT, Monitor.NONE));
	}

	private List<Point> carets(String text, String font) {
		wording.setText(text);
		wording.setFont(Jobs.font(font, null, null, null));
		return preparer.carets(wording, Tolerance.DEFAULT, Monitor.NONE).stream().map(CaretPlace::foot).toList();
	}

	/** DejaVu Sans is a package of the system. */
	private void assumeFont() {
		assumeFalse(carets("אב", "DejaVu Sans").isEmpty(), "DejaVu Sans is not installed");
	}

	@Test
	void caretOfHebrewMovesToTheLeft() {
		assumeFont();
		List<Point> places = carets("אבג ד", "DejaVu Sans");
		for (int i = 1; i < places.size(); i++) {
			assertTrue(places.get(i).x() < places.get(i - 1).x() - 0.5, i + " of " + places);
		}
		assertEquals(0, places.get(5).x(), 1e-6);
	}

	@Test
	void caretInMixedTextStandsWhereTypingGoesOn() {
		assumeFont();
		List<Point> places = carets("ab אבג cd", "DejaVu Sans");
		assertEquals(10, places.size());
		// after the third Hebrew letter it is at the left of all three, where the blank ends
		assertEquals(places.get(3).x(), places.get(6).x(), 0.5);
		assertTrue(places.get(4).x() > places.get(5).x() && places.get(5).x() > places.get(6).x(), places.toString());
		assertTrue(places.get(7).x() > places.get(4).x() && places.get(9).x() > places.get(8).x(), places.toString());
	}

	@Test
	void ligatureOfArabicIsPartedEvenly() {
		assumeFont();
		// lam and alef become one letter
		List<Point> places = carets("لا", "DejaVu Sans");
		assertEquals(places.get(0).x() / 2, places.get(1).x(), 1e-6);
		assertEquals(0, places.get(2).x(), 1e-6);
	}

	@Test
	void textThatCannotBeShownHasCaretsAllTheSame() {
		for (String text : List.of("\uD83D", "a\uDE00b", "\u0000\u0007\u001B", "😀 א 😀", "\u202Eabc\u2067",
				"א\uD83D\uD83D", "ab\u0301\u0301")) {
			List<Point> places = carets(text);
			assertEquals(text.length() + 1, places.size());
			places.forEach(place -> assertTrue(Double.isFinite(place.x()) && Double.isFinite(place.y())));
			preparer.letters(wording, Tolerance.DEFAULT, Monitor.NONE);
		}
	}

	@Test
	void longTextHasACaretBeforeEachCharacter() {
		String text = "Harbour אבג ".repeat(834).substring(0, 10_000);
		assertEquals(10_001, carets(text).size());
	}

	@Test
	void lettersAreKnownWhereTheyStand() {
		carets("HIH");
		wording.getNudges().add(nudge(1, 3, -2, 90, 2));
		List<LetterPlace> letters = preparer.letters(wording, Tolerance.DEFAULT, Monitor.NONE);
		LetterPlace middle = letters.get(1);
		Point set = middle.box().centre();
		assertEquals(set.x() + 3, middle.middle().x(), 1e-6);
		assertEquals(set.y() - 2, middle.middle().y(), 1e-6);
		// turned by a quarter, its upper left is at the right
		assertEquals(middle.middle().x() + middle.box().height(), middle.corners().get(0).x(), 1e-6);
		assertEquals(0, middle.lie(), 1e-9);
		wording.setFlow(Flow.ARC);
		wording.setArcRadius(30);
		LetterPlace bent = preparer.letters(wording, Tolerance.DEFAULT, Monitor.NONE).get(2);
		assertTrue(bent.lie() > 0.1 && bent.lie() < 1.5, "lies at " + bent.lie());
		Point along = bent.alongLine(new Point(Math.cos(bent.lie()), Math.sin(bent.lie())));
		assertEquals(1, along.x(), 1e-9);
		assertEquals(0, along.y(), 1e-9);
	}

	private static Nudge nudge(int index, double dx, double dy, double turn, double scale) {
		Nudge nudge = FrisketFactory.INSTANCE.createNudge();
		nudge.setIndex(index);
		nudge.setDx(dx);
		nudge.setDy(dy);
		nudge.setTurn(turn);
		nudge.setScale(scale);
		return nudge;
	}
}
