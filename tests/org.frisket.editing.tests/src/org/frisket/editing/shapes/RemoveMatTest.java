package org.frisket.editing.shapes;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.junit.jupiter.api.Test;

/** A dot; a mat behind it on a layer of its own, and another behind that mat. */
class RemoveMatTest {

	private final Job job = Jobs.create("tags", "Gift tags");
	private final Layer far = Jobs.addLayer(job, "Far");
	private final Layer near = Jobs.addLayer(job, "Near");
	private final Layer front = Jobs.addLayer(job, "Front");
	private final Element dot = Jobs.addOutline(front, "M0 0v9h9z");
	private final Mat inner = Jobs.addMat(near, 2, List.of(dot));
	private final Mat outer = Jobs.addMat(far, 3, List.of(inner));

	@Test
	void layerThatIsLeftEmptyGoesToo() throws IOException {
		byte[] before = JobFile.toBytes(job);
		RemoveMat edit = new RemoveMat(outer);
		assertTrue(edit.canApply());
		edit.apply();
		assertEquals(List.of(near, front), job.getLayers());
		edit.undo();
		assertArrayEquals(before, JobFile.toBytes(job));
	}

	@Test
	void layerWithSomethingElseOnItStays() {
		Jobs.addOutline(far, "M0 0v9h9z");
		new RemoveMat(outer).apply();
		assertEquals(List.of(far, near, front), job.getLayers());
	}

	@Test
	void matThatStoodBehindItStandsBehindItsElements() throws IOException {
		byte[] before = JobFile.toBytes(job);
		RemoveMat edit = new RemoveMat(inner);
		edit.apply();
		assertEquals(List.of(dot), outer.getBehind());
		assertEquals(3, outer.getDistance());
		assertEquals(List.of(far, front), job.getLayers());
		edit.undo();
		assertArrayEquals(before, JobFile.toBytes(job));
	}

	@Test
	void lockedMatStays() {
		far.setLocked(true);
		assertFalse(new RemoveMat(outer).canApply());
		assertFalse(new RemoveMat(inner).canApply());
	}
}
