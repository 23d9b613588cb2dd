package org.frisket.editing.shapes;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;

import org.frisket.editing.EditHistory;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.Outline;
import org.junit.jupiter.api.Test;

class ChangePathTest {

	private final Job job = Jobs.create("tags", "Gift tags");
	private final Layer layer = Jobs.addLayer(job, "Front");
	private final Outline outline = Jobs.addOutline(layer, "M 0,0 v9 h9 z");

	private static String name(ChangePath.Change change, int count, Outline outline) {
		return ChangePath.nodes(change, count, outline, "M0 0L1 1").name();
	}

	@Test
	void isNamedByWhatWasDone() {
		assertEquals("Move node", name(ChangePath.Change.MOVE, 1, outline));
		assertEquals("Move 2 nodes", name(ChangePath.Change.MOVE, 2, outline));
		assertEquals("Add node", name(ChangePath.Change.ADD, 1, outline));
		assertEquals("Delete 3 nodes", name(ChangePath.Change.DELETE, 3, outline));
		assertEquals("Make node smooth", name(ChangePath.Change.SMOOTH, 1, outline));
		assertEquals("Make 2 nodes symmetric", name(ChangePath.Change.SYMMETRIC, 2, outline));
		assertEquals("Break at node", name(ChangePath.Change.BREAK, 1, outline));
		assertEquals("Move handle", ChangePath.handle(outline, "").name());
		assertEquals("Close path", ChangePath.close(outline, "").name());
	}

	@Test
	void undoGivesBackTheFirstBytesAndRedoTheNewOnes() throws IOException {
		outline.setTransform(new Matrix(2, 0, 0, 2, 5, 6));
		byte[] before = JobFile.toBytes(job);
		EditHistory history = new EditHistory();
		history.execute(ChangePath.nodes(ChangePath.Change.MOVE, 1, outline, "M0 1L0 9 9 9Z"));
		assertEquals("M0 1L0 9 9 9Z", outline.getPathData());
		assertEquals(new Matrix(2, 0, 0, 2, 5, 6), outline.getTransform());
		byte[] after = JobFile.toBytes(job);
		history.undo();
		assertArrayEquals(before, JobFile.toBytes(job));
		history.redo();
		assertArrayEquals(after, JobFile.toBytes(job));
	}

	@Test
	void samePathDataIsNoChange() {
		assertFalse(ChangePath.handle(outline, outline.getPathData()).canApply());
	}

	@Test
	void lockedAndLostOutlinesAreLeftAlone() {
		ChangePath edit = ChangePath.handle(outline, "M0 0L1 1");
		outline.setLocked(true);
		assertFalse(edit.canApply());
		outline.setLocked(false);
		layer.setLocked(true);
		assertFalse(edit.canApply());
		layer.setLocked(false);
		layer.getElements().clear();
		assertFalse(edit.canApply());
	}
}
