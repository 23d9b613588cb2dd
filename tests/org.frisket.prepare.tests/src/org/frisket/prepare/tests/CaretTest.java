package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Alignment;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.prepare.FontLibraries;
import org.frisket.prepare.JobPreparer;
import org.junit.jupiter.api.Test;

/** Places of the caret; advances from Liberation Sans, which has those of Helvetica: H 0.722 em, blank 0.278 em. */
class CaretTest {

	private final JobPreparer preparer = new JobPreparer(FontLibraries.installed());
	private final Job job = Jobs.create("job", "Carets");
	private final Wording wording = Jobs.addWording(Jobs.addLayer(job, "Wording"), "", 10);

	private List<Point> carets(String text) {
		wording.setText(text);
		wording.setFont(Jobs.font("Liberation Sans", "Regular", null, null));
		return preparer.carets(wording, Tolerance.DEFAULT, Monitor.NONE);
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
	void missingFontHasNoPlaces() {
		carets("H");
		wording.setFont(Jobs.font("Harbour Lane Grotesk", "Regular", null, null));
		assertEquals(List.of(), preparer.carets(wording, Tolerance.DEFAULT, Monitor.NONE));
	}
}
