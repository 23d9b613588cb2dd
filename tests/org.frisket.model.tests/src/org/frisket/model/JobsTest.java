package org.frisket.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

class JobsTest {

	@Test
	void idsAreCountedPerKind() {
		Job job = Jobs.create("j", "Tags");
		Layer first = Jobs.addLayer(job, "a");
		Layer second = Jobs.addLayer(job, "b");
		assertEquals("e1", Jobs.addOutline(second, "").getId());
		assertEquals("e2", Jobs.addOutline(first, "").getId());
		assertEquals("l2", second.getId());
		assertEquals("e3", Ids.nextElement(job));
	}

	@Test
	void foreignIdsDoNotDisturbTheCount() {
		Job job = Jobs.create("e7", "Tags");
		Layer layer = Jobs.addLayer(job, "a");
		layer.setId("e99999999999999999999999999");
		assertEquals("e8", Jobs.addOutline(layer, "").getId());
		assertEquals("l1", Ids.nextLayer(job));
	}

	@Test
	void elementsComeFromTheLowestUp() {
		Job job = Samples.banner();
		assertEquals(List.of("e1", "e2", "e3", "e4"), Jobs.elements(job).stream().map(Element::getId).toList());
		assertEquals("Backing", Jobs.layerOf(Jobs.element(job, "e3").orElseThrow()).getName());
		assertTrue(Jobs.element(job, "e5").isEmpty());
	}

	@Test
	void matsOfAnElementAreTheOnesBehindIt() {
		Job job = Samples.banner();
		Element wording = Jobs.element(job, "e1").orElseThrow();
		List<Mat> mats = Jobs.matsOf(wording);
		assertEquals(List.of("e3"), mats.stream().map(Element::getId).toList());
		assertSame(job, Jobs.jobOf(wording.getOperations().get(0)));
		assertNull(Jobs.jobOf(FrisketFactory.INSTANCE.createMat()));
		assertTrue(Jobs.matsOf(FrisketFactory.INSTANCE.createMat()).isEmpty());
	}

	@Test
	void invalidIdIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> Jobs.create("my job", null));
		assertThrows(IllegalArgumentException.class, () -> Jobs.create("", null));
	}
}
