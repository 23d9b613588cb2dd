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
		assertEquals(List.of("e1", "e2", "e3", "e4", "e5", "e6", "e7"), Jobs.elements(job).stream().map(Element::getId).toList());
		assertEquals("Backing", Jobs.layerOf(Jobs.element(job, "e3").orElseThrow()).getName());
		assertTrue(Jobs.element(job, "e8").isEmpty());
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
	void groupIsFoundFromAnyOfItsElements() {
		Job job = Samples.banner();
		Element wording = Jobs.element(job, "e1").orElseThrow();
		assertEquals("g1", Jobs.groupOf(wording).orElseThrow().getId());
		assertEquals(List.of("e3", "e1", "e2"),
				Jobs.elements(Jobs.groupOf(wording).orElseThrow()).stream().map(Element::getId).toList());
		assertEquals("g3", Ids.nextGroup(job));
		assertTrue(Jobs.groupOf(Jobs.element(job, "e4").orElseThrow()).isEmpty());
		assertTrue(Jobs.groupOf(FrisketFactory.INSTANCE.createMat()).isEmpty());
	}

	@Test
	void elementJoinsOneGroupOnly() {
		Job job = Samples.banner();
		Element wording = Jobs.element(job, "e1").orElseThrow();
		Group fresh = Jobs.addGroup(job, List.of(wording));
		assertSame(fresh, Jobs.groupOf(wording).orElseThrow());
		assertEquals(List.of("e3", "e2"), Jobs.elements(job.getGroups().get(0)).stream().map(Element::getId).toList());
	}

	@Test
	void whatIsHiddenOrLockedMayBeSoByItsLayer() {
		Job job = Samples.banner();
		Element wording = Jobs.element(job, "e1").orElseThrow();
		Element outline = Jobs.element(job, "e2").orElseThrow();
		Element mat = Jobs.element(job, "e3").orElseThrow();
		assertEquals(List.of(true, false, false), List.of(wording, outline, mat).stream().map(Jobs::isShown).toList());
		assertEquals(List.of(false, true, true), List.of(wording, outline, mat).stream().map(Jobs::isLocked).toList());
	}

	@Test
	void invalidIdIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> Jobs.create("my job", null));
		assertThrows(IllegalArgumentException.class, () -> Jobs.create("", null));
	}
}
