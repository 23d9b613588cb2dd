package org.frisket.editing.elements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.editing.Edit;
import org.frisket.editing.JobFragment;
import org.frisket.editing.arranging.AlignElements;
import org.frisket.editing.arranging.Box;
import org.frisket.editing.arranging.DistributeElements;
import org.frisket.editing.shapes.AddMatBehind;
import org.frisket.editing.shapes.RemoveMat;
import org.frisket.model.Element;
import org.frisket.model.Group;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Five outlines a to e on two layers, and a mat of a below them. */
class GroupEditsTest {

	private Job job;
	private Layer back;
	private Layer front;
	private Element a;
	private Element b;
	private Element c;
	private Element d;
	private Element e;
	private Mat mat;

	@BeforeEach
	void makeJob() {
		job = Jobs.create("tags", "Gift tags");
		Layer mats = Jobs.addLayer(job, "Mat");
		back = Jobs.addLayer(job, "Back");
		front = Jobs.addLayer(job, "Front");
		a = Jobs.addOutline(back, "M0 0L0 1L1 1Z");
		b = Jobs.addOutline(back, "M0 0L0 1L2 1Z");
		c = Jobs.addOutline(front, "M0 0L0 1L3 1Z");
		d = Jobs.addOutline(front, "M0 0L0 1L4 1Z");
		e = Jobs.addOutline(front, "M0 0L0 1L5 1Z");
		mat = Jobs.addMat(mats, 3, List.of(a));
	}

	private String text() {
		try {
			return new String(JobFile.toBytes(job), StandardCharsets.UTF_8);
		} catch (IOException ex) {
			throw new AssertionError(ex);
		}
	}

	private void assertReversible(Edit edit) {
		String before = text();
		assertTrue(edit.canApply(), edit.name());
		edit.apply();
		String after = text();
		assertFalse(before.equals(after), edit.name());
		for (int i = 0; i < 2; i++) {
			edit.undo();
			assertEquals(before, text(), edit.name());
			edit.redo();
			assertEquals(after, text(), edit.name());
		}
	}

	private Group group(Element... elements) {
		GroupElements edit = new GroupElements(List.of(elements));
		edit.apply();
		return edit.group();
	}

	@Test
	void elementsOfSeveralLayersBecomeOneGroup() {
		GroupElements edit = new GroupElements(List.of(c, a));
		assertReversible(edit);
		assertEquals(List.of(a, c), edit.group().getElements());
		assertEquals("g1", edit.group().getId());
		assertEquals(List.of(a, b), back.getElements());
		assertSame(edit.group(), Jobs.groupOf(a).orElseThrow());
	}

	@Test
	void oneElementIsNoGroupAndAGroupIsNotGroupedAgain() {
		assertFalse(new GroupElements(List.of(a)).canApply());
		assertFalse(new GroupElements(List.of(a, a)).canApply());
		assertFalse(new GroupElements(List.of()).canApply());
		group(a, b);
		assertFalse(new GroupElements(List.of(a, b)).canApply());
	}

	@Test
	void wholeGroupBecomesAnInnerOne() {
		Group inner = group(a, b);
		GroupElements edit = new GroupElements(List.of(a, b, c));
		assertReversible(edit);
		assertEquals(List.of(edit.group()), job.getGroups());
		assertEquals(List.of(inner), edit.group().getGroups());
		assertEquals(List.of(c), edit.group().getElements());
	}

	@Test
	void twoWholeGroupsMakeOneWithoutElementsOfItsOwn() {
		group(a, b);
		group(c, d);
		GroupElements edit = new GroupElements(List.of(a, b, c, d));
		assertReversible(edit);
		assertEquals(2, edit.group().getGroups().size());
		assertTrue(edit.group().getElements().isEmpty());
	}

	@Test
	void someOfAGroupBecomeAGroupWithinIt() {
		Group outer = group(a, b, c);
		GroupElements edit = new GroupElements(List.of(a, b));
		assertReversible(edit);
		assertEquals(List.of(outer), job.getGroups());
		assertEquals(List.of(edit.group()), outer.getGroups());
		assertEquals(List.of(c), outer.getElements());
	}

	@Test
	void elementLeavesItsGroupForTheNewOneAndTheRestIsNoGroupAnyMore() {
		group(a, b);
		GroupElements edit = new GroupElements(List.of(a, c));
		assertReversible(edit);
		assertEquals(List.of(edit.group()), job.getGroups());
		assertTrue(Jobs.groupOf(b).isEmpty());
	}

	@Test
	void ungroupingLeavesInnerGroups() {
		Group inner = group(a, b);
		group(a, b, c);
		UngroupElements edit = new UngroupElements(List.of(c));
		assertReversible(edit);
		assertEquals(List.of(inner), job.getGroups());
		assertTrue(Jobs.groupOf(c).isEmpty());
		assertReversible(new UngroupElements(List.of(a)));
		assertTrue(job.getGroups().isEmpty());
		assertFalse(new UngroupElements(List.of(a, b, c)).canApply());
	}

	@Test
	void ungroupingTakesAllGroupsOfTheChosen() {
		group(a, b);
		group(c, d);
		assertReversible(new UngroupElements(List.of(a, d, e)));
		assertTrue(job.getGroups().isEmpty());
	}

	@Test
	void lockedElementsAreNeitherGroupedNorUngrouped() {
		group(a, b);
		a.setLocked(true);
		assertFalse(new GroupElements(List.of(a, c)).canApply());
		assertFalse(new UngroupElements(List.of(a)).canApply());
		a.setLocked(false);
		back.setLocked(true);
		assertFalse(new UngroupElements(List.of(a)).canApply());
	}

	@Test
	void elementsOfTwoJobsAreNotGrouped() {
		Job other = Jobs.create("other", "Other");
		Element far = Jobs.addOutline(Jobs.addLayer(other, "Far"), "M0 0L0 1L1 1Z");
		assertFalse(new GroupElements(List.of(a, far)).canApply());
	}

	@Test
	void deletedElementLeavesItsGroup() {
		Group group = group(a, b, c);
		assertReversible(new DeleteElements(List.of(c)));
		assertEquals(List.of(a, b), group.getElements());
	}

	@Test
	void groupOfOneDoesNotOutliveADeletion() {
		group(a, b);
		assertReversible(new DeleteElements(List.of(b)));
		assertTrue(job.getGroups().isEmpty());
	}

	@Test
	void innerGroupsThatAreNoneAnyMoreGiveTheirRestToTheOneAround() {
		group(a, b);
		Group outer = group(a, b, c);
		assertReversible(new DeleteElements(List.of(b)));
		assertEquals(List.of(outer), job.getGroups());
		assertTrue(outer.getGroups().isEmpty());
		assertEquals(List.of(c, a), outer.getElements());
	}

	@Test
	void outerGroupGoesWhenOnlyTheInnerOneIsLeft() {
		Group inner = group(a, b);
		group(a, b, c);
		assertReversible(new DeleteElements(List.of(c)));
		assertEquals(List.of(inner), job.getGroups());
	}

	@Test
	void emptiedGroupsGoWithAllTheirInnerOnes() {
		group(a, b);
		group(c, d);
		group(a, b, c, d);
		assertReversible(new DeleteElements(List.of(a, b, c, d)));
		assertTrue(job.getGroups().isEmpty());
	}

	@Test
	void matThatGoesWithWhatItFollowedLeavesItsGroupToo() {
		group(mat, c, d);
		assertReversible(new DeleteElements(List.of(a)));
		assertEquals(List.of(c, d), job.getGroups().get(0).getElements());
	}

	@Test
	void removedMatLeavesItsGroup() {
		group(mat, c);
		assertReversible(new RemoveMat(mat));
		assertTrue(job.getGroups().isEmpty());
	}

	@Test
	void copiesAreGroupedAsTheirOriginals() {
		group(a, b);
		group(a, b, c).setName("Wreath");
		DuplicateElements edit = new DuplicateElements(List.of(a, b, c, d), 1, 1);
		assertReversible(edit);
		assertEquals(2, job.getGroups().size());
		Group copy = job.getGroups().get(1);
		assertEquals("Wreath", copy.getName());
		assertEquals(1, copy.getGroups().size());
		assertEquals(edit.copies().subList(0, 2), copy.getGroups().get(0).getElements());
		assertEquals(edit.copies().subList(2, 3), copy.getElements());
		assertTrue(Jobs.groupOf(edit.copies().get(3)).isEmpty());
		assertEquals(4, Jobs.groups(job).stream().map(Group::getId).distinct().count());
	}

	@Test
	void copyOfOneMemberIsInNoGroup() {
		group(a, b);
		DuplicateElements edit = new DuplicateElements(List.of(a), 1, 1);
		assertReversible(edit);
		assertEquals(1, job.getGroups().size());
		assertTrue(Jobs.groupOf(edit.copies().get(0)).isEmpty());
	}

	@Test
	void copyOfAnInnerGroupAndOfOneBesideItKeepsBothLevels() {
		group(a, b);
		group(c, d);
		group(a, b, c, d);
		new DuplicateElements(List.of(a, b, c), 1, 1).apply();
		Group copy = job.getGroups().get(1);
		assertEquals(1, copy.getGroups().size());
		assertEquals(1, copy.getElements().size());
	}

	@Test
	void fragmentCarriesGroupsToAnotherJob() {
		group(a, b);
		group(a, b, c);
		String fragment = JobFragment.write(List.of(a, b, c, e));
		Job other = Jobs.create("other", "Other");
		Jobs.addGroup(other, List.of(Jobs.addOutline(Jobs.addLayer(other, "L"), "M0 0L0 1L1 1Z"),
				Jobs.addOutline(other.getLayers().get(0), "M0 0L0 1L1 1Z")));
		PasteElements edit = new PasteElements(other, JobFragment.read(fragment).orElseThrow(), 0, 0);
		edit.apply();
		assertEquals(2, other.getGroups().size());
		assertEquals(List.of("g1", "g2", "g3"), Jobs.groups(other).stream().map(Group::getId).toList());
		assertEquals(3, Jobs.elements(other.getGroups().get(1)).size());
		edit.undo();
		assertEquals(1, other.getGroups().size());
		assertEquals(2, Jobs.elements(other).size());
	}

	@Test
	void pastingTwiceMakesGroupsOfTheirOwn() {
		group(a, b);
		Job fragment = JobFragment.read(JobFragment.write(List.of(a, b))).orElseThrow();
		assertReversible(new PasteElements(job, fragment, 1, 1));
		assertReversible(new PasteElements(job, fragment, 2, 2));
		assertEquals(3, job.getGroups().size());
		assertEquals(3, Jobs.groups(job).stream().map(Group::getId).distinct().count());
		assertEquals(1, fragment.getGroups().size());
	}

	@Test
	void fragmentOfSomeKeepsNoGroupOfOne() {
		group(a, b);
		assertTrue(JobFragment.read(JobFragment.write(List.of(a, c))).orElseThrow().getGroups().isEmpty());
	}

	@Test
	void matBehindAGroupFollowsItAndIsNotOfIt() {
		Group group = group(b, c);
		AddMatBehind edit = new AddMatBehind(List.of(b, c), List.of(2.0), mm -> "Mat");
		assertReversible(edit);
		assertEquals(List.of(b, c), edit.mats().get(0).getBehind());
		assertEquals(List.of(b, c), group.getElements());
	}

	@Test
	void groupIsAlignedAsOneBox() {
		group(b, c);
		Map<Element, Box> boxes = new LinkedHashMap<>();
		boxes.put(b, new Box(10, 0, 20, 10));
		boxes.put(c, new Box(30, 0, 40, 10));
		boxes.put(d, new Box(0, 0, 5, 5));
		assertReversible(new AlignElements(boxes, AlignElements.Edge.LEFT));
		assertEquals(Matrix.translation(-10, 0), b.getTransform());
		assertEquals(Matrix.translation(-10, 0), c.getTransform());
		assertEquals(Matrix.IDENTITY, d.getTransform());
	}

	@Test
	void oneGroupAloneHasNothingToAlignTo() {
		group(b, c);
		Map<Element, Box> boxes = new LinkedHashMap<>();
		boxes.put(b, new Box(10, 0, 20, 10));
		boxes.put(c, new Box(30, 5, 40, 10));
		assertFalse(new AlignElements(boxes, AlignElements.Edge.TOP).canApply());
	}

	@Test
	void someOfAGroupAreAlignedSingly() {
		group(b, c, e);
		Map<Element, Box> boxes = new LinkedHashMap<>();
		boxes.put(b, new Box(10, 0, 20, 10));
		boxes.put(c, new Box(30, 5, 40, 10));
		assertReversible(new AlignElements(boxes, AlignElements.Edge.TOP));
		assertEquals(Matrix.translation(0, -5), c.getTransform());
	}

	@Test
	void hiddenMemberDoesNotKeepAGroupFromBeingOneBox() {
		group(b, c, e);
		e.setVisible(false);
		Map<Element, Box> boxes = new LinkedHashMap<>();
		boxes.put(b, new Box(10, 0, 20, 10));
		boxes.put(c, new Box(30, 5, 40, 10));
		assertFalse(new AlignElements(boxes, AlignElements.Edge.TOP).canApply());
	}

	@Test
	void groupIsDistributedAsOneBox() {
		group(b, c);
		Map<Element, Box> boxes = new LinkedHashMap<>();
		boxes.put(d, new Box(0, 0, 10, 10));
		boxes.put(b, new Box(11, 0, 20, 10));
		boxes.put(c, new Box(25, 0, 31, 10));
		boxes.put(e, new Box(90, 0, 100, 10));
		assertReversible(new DistributeElements(boxes, DistributeElements.Direction.ACROSS));
		assertEquals(Matrix.translation(29, 0), b.getTransform());
		assertEquals(Matrix.translation(29, 0), c.getTransform());
		assertEquals(Matrix.IDENTITY, e.getTransform());
	}

	@Test
	void matInAGroupComesAlongByItself() {
		group(a, b, mat);
		Map<Element, Box> boxes = new LinkedHashMap<>();
		boxes.put(a, new Box(10, 0, 20, 10));
		boxes.put(b, new Box(30, 0, 40, 10));
		boxes.put(mat, new Box(7, -3, 23, 13));
		boxes.put(c, new Box(0, 0, 1, 1));
		assertReversible(new AlignElements(boxes, AlignElements.Edge.LEFT));
		assertEquals(Matrix.translation(-10, 0), a.getTransform());
		assertEquals(Matrix.translation(-10, 0), b.getTransform());
		assertEquals(Matrix.IDENTITY, mat.getTransform());
	}

	@Test
	void groupTakesANameAndGivesItUp() {
		Group group = group(a, b);
		assertReversible(new RenameGroup(group, " Wreath "));
		assertEquals("Wreath", group.getName());
		assertFalse(new RenameGroup(group, "Wreath").canApply());
		assertReversible(new RenameGroup(group, " "));
		assertNull(group.getName());
	}
}
