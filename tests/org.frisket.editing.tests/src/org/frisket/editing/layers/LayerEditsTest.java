package org.frisket.editing.layers;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;

import org.frisket.editing.Edit;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Three layers with an outline each; a mat on the lowest follows the topmost. */
class LayerEditsTest {

	private Job job;
	private Layer low;
	private Layer middle;
	private Layer top;

	@BeforeEach
	void makeJob() {
		job = Jobs.create("banner", "Ferry banner");
		low = Jobs.addLayer(job, "Low");
		middle = Jobs.addLayer(job, "Middle");
		top = Jobs.addLayer(job, "Top");
		for (Layer layer : job.getLayers()) {
			Jobs.addOutline(layer, "M0 0v9h9z");
		}
		Jobs.addMat(low, 3, List.of(top.getElements().get(0)));
	}

	private List<String> names() {
		return job.getLayers().stream().map(Layer::getName).toList();
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
	void layerMovesToTheTop() throws IOException {
		assertReversible(new MoveLayer(low, 2));
		assertEquals(List.of("Middle", "Top", "Low"), names());
	}

	@Test
	void layerMovesToTheBottom() throws IOException {
		assertReversible(new MoveLayer(top, 0));
		assertEquals(List.of("Top", "Low", "Middle"), names());
	}

	@Test
	void matStillFollowsAfterRestacking() {
		new MoveLayer(top, 0).apply();
		assertEquals(1, Jobs.matsOf(top.getElements().get(0)).size());
	}

	@Test
	void layerCannotMoveOutOfTheStackNorToWhereItIs() {
		assertFalse(new MoveLayer(low, -1).canApply());
		assertFalse(new MoveLayer(low, 3).canApply());
		assertFalse(new MoveLayer(low, 0).canApply());
		assertFalse(new MoveLayer(FrisketFactory.INSTANCE.createLayer(), 0).canApply());
	}

	@Test
	void lockedLayerCanBeMovedAndColoured() {
		low.setLocked(true);
		assertTrue(new MoveLayer(low, 1).canApply());
		assertTrue(new SetLayerColour(low, "#102030").canApply());
	}

	@Test
	void layerTakesAColourAndGivesItUp() throws IOException {
		assertReversible(new SetLayerColour(low, "#1d6f78"));
		assertEquals("#1d6f78", low.getColour());
		assertReversible(new SetLayerColour(low, null));
		assertNull(low.getColour());
	}

	@Test
	void whatIsNoColourIsRefused() {
		for (String text : List.of("", "teal", "#12345", "#1234567", "#12345g")) {
			assertFalse(new SetLayerColour(low, text).canApply(), text);
		}
	}
}
