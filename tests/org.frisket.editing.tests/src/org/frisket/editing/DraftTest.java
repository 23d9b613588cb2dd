package org.frisket.editing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Random;

import org.frisket.editing.wording.ChangeWording;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DraftTest {

	private final EditHistory history = new EditHistory();
	private Job job;
	private Wording wording;
	private byte[] before;
	private int told;
	private Draft draft;

	@BeforeEach
	void makeJob() throws IOException {
		job = Jobs.create("tags", "Gift tags");
		wording = Jobs.addWording(Jobs.addLayer(job, "Front"), "For you", 12);
		before = JobFile.toBytes(job);
		draft = new Draft(history, () -> told++);
	}

	private void show(double height) {
		draft.show(() -> ChangeWording.height(wording, height));
	}

	@Test
	void whatIsShownIsInTheJobAndNotInTheHistory() {
		show(20);
		assertEquals(20, wording.getHeight());
		assertFalse(history.canUndo());
		assertEquals(1, told);
	}

	@Test
	void manyShownAndOneAcceptedAreOneStep() throws IOException {
		Random random = new Random(3);
		for (int i = 0; i < 200; i++) {
			show(5 + random.nextInt(40));
		}
		show(31);
		draft.accept();
		assertEquals(31, wording.getHeight());
		assertEquals(List.of("Change height"), history.names());
		history.undo();
		assertArrayEquals(before, JobFile.toBytes(job));
		history.redo();
		assertEquals(31, wording.getHeight());
	}

	@Test
	void droppedDraftLeavesNoTrace() throws IOException {
		show(20);
		show(25);
		draft.drop();
		assertArrayEquals(before, JobFile.toBytes(job));
		assertFalse(history.canUndo());
		assertEquals(3, told);
		draft.accept();
		assertFalse(history.canUndo());
	}

	@Test
	void backAtTheFirstValueThereIsNothingToAccept() throws IOException {
		show(20);
		show(12);
		assertFalse(draft.isShown());
		assertEquals(2, told);
		draft.accept();
		assertFalse(history.canUndo());
		assertArrayEquals(before, JobFile.toBytes(job));
	}

	@Test
	void lockedElementIsNotShownOtherwise() throws IOException {
		wording.setLocked(true);
		before = JobFile.toBytes(job);
		show(20);
		assertFalse(draft.isShown());
		assertArrayEquals(before, JobFile.toBytes(job));
		assertEquals(0, told);
	}

	@Test
	void editsOfSeveralElementsAreOneStepToo() throws IOException {
		Wording other = Jobs.addWording(wordingLayer(), "With love", 9);
		before = JobFile.toBytes(job);
		for (double height = 5; height < 30; height += 1.5) {
			double now = height;
			draft.show(() -> new EditGroup("Change height",
					List.of(ChangeWording.height(wording, now), ChangeWording.height(other, now))));
		}
		assertTrue(draft.isShown());
		draft.accept();
		assertEquals(other.getHeight(), wording.getHeight());
		assertEquals(1, history.names().size());
		history.undo();
		assertArrayEquals(before, JobFile.toBytes(job));
	}

	private org.frisket.model.Layer wordingLayer() {
		return Jobs.layerOf(wording);
	}
}
