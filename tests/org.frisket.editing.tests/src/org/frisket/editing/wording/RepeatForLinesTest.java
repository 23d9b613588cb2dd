package org.frisket.editing.wording;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.frisket.editing.arranging.Box;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Place cards of Harbour Lane: a card, a name on it and a mat behind the name, once for each guest. */
class RepeatForLinesTest {

	private static final Box CARD = new Box(0, 0, 80, 50);
	private static final Box NAME = new Box(10, 20, 40, 30);

	private Job job;
	private Layer back;
	private Layer front;
	private Outline card;
	private Wording name;
	private Mat mat;

	@BeforeEach
	void makeJob() {
		job = Jobs.create("cards", "Place cards");
		back = Jobs.addLayer(job, "Cards");
		front = Jobs.addLayer(job, "Names");
		card = Jobs.addOutline(back, "M0 0H80V50H0Z");
		name = Jobs.addWording(front, "Name", 10);
		mat = Jobs.addMat(back, 3, List.of(name));
	}

	private RepeatForLines repeat(List<String> lines) {
		return new RepeatForLines(List.of(card, name), name, lines, CARD, NAME);
	}

	private List<String> said() {
		return front.getElements().stream().map(each -> ((Wording) each).getText()).toList();
	}

	@Test
	void linesAreTakenAsTheyArePasted() {
		assertEquals(List.of("Anneke Brandt", "Bram\nTable 4", "Ove"),
				RepeatForLines.lines("\n  Anneke Brandt \r\n\t\nBram \t Table 4\n\nOve"));
		assertEquals(List.of(), RepeatForLines.lines(" \n\t\n"));
	}

	@Test
	void eachLineHasACardOfItsOwn() {
		RepeatForLines edit = repeat(List.of("Anneke", "Bram", "Ove"));
		edit.apply();
		assertEquals(List.of("Anneke", "Bram", "Ove"), said());
		assertEquals(3, back.getElements().stream().filter(Outline.class::isInstance).count());
		List<Mat> mats = back.getElements().stream().filter(Mat.class::isInstance).map(Mat.class::cast).toList();
		assertEquals(3, mats.size(), "the mat came along without being selected");
		assertEquals(front.getElements(), mats.stream().flatMap(each -> Jobs.sources(each).stream()).toList());
		assertEquals(6, edit.copies().size());
	}

	@Test
	void copiesLieClearOfEachOther() {
		repeat(List.of("Anneke", "Bram", "Ove", "Pia", "Quint", "Rosalind", "Signe")).apply();
		List<Box> cards = new ArrayList<>();
		for (Element each : back.getElements()) {
			if (each instanceof Outline) {
				double x = each.getTransform().e();
				double y = each.getTransform().f();
				cards.add(new Box(x, y, x + CARD.width(), y + CARD.height()));
			}
		}
		assertEquals(7, cards.size());
		for (Box one : cards) {
			assertTrue(cards.stream().filter(other -> other != one).allMatch(other -> one.maxX() < other.minX()
					|| other.maxX() < one.minX() || one.maxY() < other.minY() || other.maxY() < one.minY()), cards.toString());
		}
		Box all = cards.stream().reduce(Box::with).orElseThrow();
		assertTrue(all.width() < 2.5 * all.height() && all.height() < 2.5 * all.width(), all.toString());
	}

	@Test
	void longerLinesHaveTheRoomTheyNeed() {
		// ten times as long as what it said, without a card around it, and so many that several lie in a row
		String guest = "Bartholomea from the Old Harbour at Tern";
		new RepeatForLines(List.of(name), name, Collections.nCopies(400, guest), NAME, NAME).apply();
		Element beside = front.getElements().get(1);
		assertEquals(0, beside.getTransform().f());
		assertTrue(beside.getTransform().e() > 10 * NAME.width(), beside.getTransform().toString());
	}

	@Test
	void whatFollowsOthersTooStays() {
		Mat both = Jobs.addMat(back, 6, List.of(name, Jobs.addOutline(front, "M0 0H9V9H0Z")));
		assertEquals(List.of(card, name, mat), RepeatForLines.withFollowers(List.of(card, name)));
		assertFalse(RepeatForLines.withFollowers(List.of(card, name)).contains(both));
	}

	@Test
	void allIsTakenBackAndMadeAgain() throws Exception {
		byte[] before = JobFile.toBytes(job);
		RepeatForLines edit = repeat(List.of("Anneke", "Bram"));
		edit.apply();
		byte[] after = JobFile.toBytes(job);
		edit.undo();
		assertArrayEquals(before, JobFile.toBytes(job));
		edit.redo();
		assertArrayEquals(after, JobFile.toBytes(job));
	}

	@Test
	void whatCannotBeIsNotDone() {
		assertFalse(repeat(List.of()).canApply());
		assertFalse(repeat(List.of("Name")).canApply(), "that is what it says");
		assertFalse(repeat(Collections.nCopies(RepeatForLines.MOST + 1, "Anneke")).canApply());
		assertTrue(repeat(List.of("Anneke")).canApply());
		assertFalse(new RepeatForLines(List.of(card), name, List.of("A", "B"), CARD, NAME).canApply());
		back.setLocked(true);
		assertFalse(repeat(List.of("Anneke", "Bram")).canApply());
	}
}
