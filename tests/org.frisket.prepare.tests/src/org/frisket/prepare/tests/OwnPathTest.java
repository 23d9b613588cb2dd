package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.Wording;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.OwnPath;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.fonts.FontLibraries;
import org.junit.jupiter.api.Test;

class OwnPathTest {

	private final Job job = Jobs.create("own", "Own path");
	private final Layer layer = Jobs.addLayer(job, "Front");

	private PreparedElement prepared(String id) {
		return new JobPreparer(FontLibraries.installed()).prepare(job, Tolerance.DEFAULT, Monitor.NONE).element(id)
				.orElseThrow();
	}

	@Test
	void placedAgainItIsWhatWasShown() {
		Wording wording = Jobs.addWording(layer, "Oar", 20);
		wording.setFont(Jobs.font("Liberation Sans", null, null, null));
		wording.setTransform(new Matrix(0.8, 0.6, -0.6, 0.8, 30, 40));
		PreparedElement prepared = prepared(wording.getId());
		Outline placed = PathData.parse(OwnPath.of(prepared))
				.transformed(new Transform(0.8, 0.6, -0.6, 0.8, 30, 40));
		Bounds shown = prepared.bounds();
		assertFalse(shown.isEmpty());
		assertEquals(shown.minX(), placed.bounds().minX(), 1e-4);
		assertEquals(shown.minY(), placed.bounds().minY(), 1e-4);
		assertEquals(shown.maxX(), placed.bounds().maxX(), 1e-4);
		assertEquals(shown.maxY(), placed.bounds().maxY(), 1e-4);
		assertEquals(prepared.region().toOutline().nodeCount(), placed.nodeCount());
	}

	@Test
	void openLinesStayOpen() {
		String id = Jobs.addOutline(layer, "M0 0L10 0L10 10").getId();
		assertEquals("M0 0L10 0 10 10", OwnPath.of(prepared(id)));
	}

	@Test
	void flattenedElementHasNoPathOfItsOwn() {
		org.frisket.model.Outline outline = Jobs.addOutline(layer, "M0 0L10 0L10 10Z");
		outline.setTransform(new Matrix(1, 0, 0, 0, 0, 0));
		assertEquals("", OwnPath.of(prepared(outline.getId())));
	}
}
