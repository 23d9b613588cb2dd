package org.frisket.editing.arranging;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;

import org.frisket.editing.Edit;
import org.frisket.editing.EditHistory;
import org.frisket.model.Guide;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A job with two guides. */
class GuideEditsTest {

	private Job job;
	private Guide across;
	private Guide down;

	@BeforeEach
	void makeJob() {
		job = Jobs.create("cards", "Place cards");
		across = Jobs.addGuide(job, true, 20);
		down = Jobs.addGuide(job, false, 35.5);
	}

	/** Applies, undoes and redoes, each to the byte. */
	private void assertReversible(Edit edit) throws IOException {
		byte[] before = JobFile.toBytes(job);
		assertTrue(edit.canApply());
		edit.apply();
		byte[] after = JobFile.toBytes(job);
		assertFalse(Arrays.equals(before, after));
		edit.undo();
		assertArrayEquals(before, JobFile.toBytes(job));
		edit.redo();
		assertArrayEquals(after, JobFile.toBytes(job));
	}

	@Test
	void guideIsAdded() throws IOException {
		assertReversible(new AddGuide(job, true, -7.25));
		Guide added = job.getGuides().get(2);
		assertTrue(added.isAcross());
		assertEquals(-7.25, added.getAt());
	}

	@Test
	void guideOnAGuideIsNotAdded() {
		assertFalse(new AddGuide(job, true, 20).canApply());
		assertTrue(new AddGuide(job, false, 20).canApply());
	}

	@Test
	void guideHasAPlace() {
		assertFalse(new AddGuide(job, true, Double.NaN).canApply());
		assertFalse(new AddGuide(job, true, Double.POSITIVE_INFINITY).canApply());
		assertFalse(new MoveGuide(across, Double.NaN).canApply());
	}

	@Test
	void guideIsMoved() throws IOException {
		assertReversible(new MoveGuide(down, 40));
		assertEquals(40, down.getAt());
		assertEquals(20, across.getAt());
	}

	@Test
	void guideThatStaysIsNotMoved() {
		assertFalse(new MoveGuide(down, 35.5).canApply());
	}

	@Test
	void guideIsRemovedAndComesBackToItsPlaceInTheList() throws IOException {
		assertReversible(new RemoveGuide(across));
		assertEquals(List.of(down), job.getGuides());
	}

	@Test
	void guideThatIsGoneIsNeitherMovedNorRemoved() {
		new RemoveGuide(across).apply();
		assertFalse(new RemoveGuide(across).canApply());
		assertFalse(new MoveGuide(across, 3).canApply());
	}

	@Test
	void historyNamesThem() {
		EditHistory history = new EditHistory();
		history.execute(new AddGuide(job, false, 3));
		history.execute(new MoveGuide(down, 4));
		history.execute(new RemoveGuide(across));
		assertEquals(List.of("Add guide", "Move guide", "Remove guide"), history.names());
	}
}
