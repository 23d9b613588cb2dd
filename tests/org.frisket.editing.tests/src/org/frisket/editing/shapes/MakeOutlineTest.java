package org.frisket.editing.shapes;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.model.Group;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.junit.jupiter.api.Test;

/** A wording between two others, with a mat behind it and the next one, in a group. */
class MakeOutlineTest {

	private final Job job = Jobs.create("banner", "Ferry banner");
	private final Layer back = Jobs.addLayer(job, "Back");
	private final Layer front = Jobs.addLayer(job, "Front");
	private final Wording before = Jobs.addWording(front, "The", 20);
	private final Wording wording = Jobs.addWording(front, "Ferry", 20);
	private final Wording after = Jobs.addWording(front, "sails", 20);
	private final Mat mat = Jobs.addMat(back, 3, List.of(before, wording, after));
	private final Group group = Jobs.addGroup(job, List.of(wording, after));

	MakeOutlineTest() {
		wording.setName("Name");
		wording.setTransform(Matrix.translation(7, 8));
		Jobs.addOperation(wording, OperationKind.KISS_CUT).setPasses(2);
	}

	private static MakeOutline edit(Wording... wordings) {
		Map<Wording, String> paths = new LinkedHashMap<>();
		for (Wording each : wordings) {
			paths.put(each, "M0 0L9 0 9 9Z");
		}
		return new MakeOutline(paths);
	}

	@Test
	void outlineTakesThePlaceOfTheWording() {
		String id = wording.getId();
		MakeOutline edit = edit(wording);
		edit.apply();
		Outline outline = (Outline) front.getElements().get(1);
		assertSame(outline, edit.outlines().get(0));
		assertEquals(id, outline.getId());
		assertEquals("Name", outline.getName());
		assertEquals("M0 0L9 0 9 9Z", outline.getPathData());
		assertEquals(Matrix.translation(7, 8), outline.getTransform());
		assertEquals(OperationKind.KISS_CUT, outline.getOperations().get(0).getKind());
		assertEquals(2, outline.getOperations().get(0).getPasses());
		assertEquals(3, front.getElements().size());
	}

	@Test
	void matsAndGroupsFollowTheOutline() {
		MakeOutline edit = edit(wording);
		edit.apply();
		Outline outline = edit.outlines().get(0);
		assertEquals(List.of(before, outline, after), mat.getBehind());
		assertTrue(group.getElements().contains(outline));
		assertFalse(group.getElements().contains(wording));
	}

	@Test
	void severalBecomeOutlinesInOneStep() throws IOException {
		byte[] first = JobFile.toBytes(job);
		MakeOutline edit = edit(wording, before);
		assertEquals("Make outline of 2 elements", edit.name());
		edit.apply();
		assertEquals(List.of(edit.outlines().get(1), edit.outlines().get(0), after), front.getElements());
		edit.undo();
		assertArrayEquals(first, JobFile.toBytes(job));
	}

	@Test
	void undoGivesBackTheFirstBytesAndRedoTheNewOnes() throws IOException {
		byte[] first = JobFile.toBytes(job);
		MakeOutline edit = edit(wording);
		assertEquals("Make outline of wording", edit.name());
		edit.apply();
		byte[] second = JobFile.toBytes(job);
		edit.undo();
		assertArrayEquals(first, JobFile.toBytes(job));
		edit.redo();
		assertArrayEquals(second, JobFile.toBytes(job));
	}

	@Test
	void resultIsAJobThatCanBeReadAgain() throws IOException {
		edit(wording).apply();
		byte[] bytes = JobFile.toBytes(job);
		Job read = JobFile.load(bytes, "banner");
		assertArrayEquals(bytes, JobFile.toBytes(read));
	}

	@Test
	void lockedOnesAndThoseWithoutCurvesStay() {
		assertFalse(new MakeOutline(Map.of(wording, "")).canApply());
		assertFalse(new MakeOutline(Map.of()).canApply());
		wording.setLocked(true);
		assertFalse(edit(wording).canApply());
		assertFalse(edit(wording, before).canApply());
	}
}
