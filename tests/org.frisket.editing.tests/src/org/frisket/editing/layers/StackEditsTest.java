package org.frisket.editing.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.frisket.editing.Edit;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.elements.DuplicateElements;
import org.frisket.editing.elements.GroupElements;
import org.frisket.editing.elements.RenameElements;
import org.frisket.editing.elements.ReorderElements;
import org.frisket.editing.elements.SetElements;
import org.frisket.editing.shapes.AddMatBehind;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Two layers with two outlines each above one with a mat of the topmost outline. */
class StackEditsTest {

	private Job job;
	private Layer mats;
	private Layer back;
	private Layer front;
	private Element a;
	private Element b;
	private Element c;
	private Element d;
	private Mat mat;

	@BeforeEach
	void makeJob() {
		job = Jobs.create("tags", "Gift tags");
		mats = Jobs.addLayer(job, "Mat");
		back = Jobs.addLayer(job, "Back");
		front = Jobs.addLayer(job, "Front");
		a = Jobs.addOutline(back, "M0 0L0 1L1 1Z");
		b = Jobs.addOutline(back, "M0 0L0 1L2 1Z");
		c = Jobs.addOutline(front, "M0 0L0 1L3 1Z");
		d = Jobs.addOutline(front, "M0 0L0 1L4 1Z");
		mat = Jobs.addMat(mats, 3, List.of(d));
		Jobs.addOperation(d, OperationKind.CREASE);
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

	@Test
	void elementsAreHiddenAndShown() {
		assertReversible(SetElements.visible(List.of(a, c), false));
		assertFalse(Jobs.isShown(a));
		assertFalse(SetElements.visible(List.of(a, c), false).canApply());
		assertReversible(SetElements.visible(List.of(a, b), true));
		assertTrue(Jobs.isShown(a));
		assertFalse(Jobs.isShown(c));
	}

	@Test
	void lockedElementsAreHiddenUnlockedAndOtherwiseLeftAlone() {
		assertReversible(SetElements.locked(List.of(a), true));
		assertTrue(SetElements.visible(List.of(a), false).canApply());
		assertFalse(new MoveElements(List.of(a), 1, 1).canApply());
		assertFalse(new DeleteElements(List.of(a)).canApply());
		assertFalse(new DuplicateElements(List.of(a), 1, 1).canApply());
		assertFalse(new ReorderElements(List.of(a), ReorderElements.Way.FRONT).canApply());
		assertFalse(new RestackElements(List.of(a), front, 0).canApply());
		assertFalse(new RenameElements(List.of(a), "A").canApply());
		assertFalse(new AddMatBehind(List.of(a), List.of(1.0), mm -> "M").canApply());
		assertReversible(SetElements.locked(List.of(a), false));
		assertTrue(new MoveElements(List.of(a), 1, 1).canApply());
	}

	@Test
	void elementsOfALockedLayerCanBeHidden() {
		back.setLocked(true);
		assertReversible(SetElements.visible(List.of(a), false));
		assertReversible(SetElements.locked(List.of(a), true));
	}

	@Test
	void lockedElementKeepsItsPlaceWhenOthersAreReorderedAroundIt() {
		SetElements.locked(List.of(c), true).apply();
		assertReversible(new ReorderElements(List.of(d), ReorderElements.Way.BOTTOM));
		assertEquals(List.of(d, c), front.getElements());
	}

	@Test
	void nothingToHideIsRefused() {
		assertFalse(SetElements.visible(List.of(), false).canApply());
	}

	@Test
	void elementTakesANameAndGivesItUp() {
		assertReversible(new RenameElements(List.of(a), " Gull "));
		assertEquals("Gull", a.getName());
		assertFalse(new RenameElements(List.of(a), "Gull").canApply());
		assertReversible(new RenameElements(List.of(a), ""));
		assertNull(a.getName());
		assertFalse(new RenameElements(List.of(a), null).canApply());
	}

	@Test
	void elementGoesToAPlaceOnAnotherLayer() {
		assertReversible(new RestackElements(List.of(d), back, 1));
		assertEquals(List.of(a, d, b), back.getElements());
		assertEquals(List.of(c), front.getElements());
		assertEquals(List.of(d), mat.getBehind());
		assertEquals(OperationKind.CREASE, d.getOperations().get(0).getKind());
	}

	@Test
	void severalGoTogetherInTheOrderOfTheStack() {
		assertReversible(new RestackElements(List.of(d, a, c), back, 0));
		assertEquals(List.of(a, c, d, b), back.getElements());
		assertTrue(front.getElements().isEmpty());
	}

	@Test
	void elementsGoOntoTheTopOfALayer() {
		assertReversible(RestackElements.onto(List.of(a, d), front));
		assertEquals(List.of(c, a, d), front.getElements());
	}

	@Test
	void groupKeepsItsElementsWhenTheyAreRestacked() {
		new GroupElements(List.of(a, c)).apply();
		assertReversible(new RestackElements(List.of(c), back, 0));
		assertEquals(List.of(a, c), job.getGroups().get(0).getElements());
	}

	@Test
	void restackingWithinALayerCountsTheOthers() {
		assertReversible(new RestackElements(List.of(c), front, 1));
		assertEquals(List.of(d, c), front.getElements());
		assertFalse(new RestackElements(List.of(c), front, 1).canApply());
		assertFalse(new RestackElements(List.of(c), front, 2).canApply());
		assertFalse(new RestackElements(List.of(c), front, -1).canApply());
	}

	@Test
	void nothingGoesOntoALockedLayer() {
		back.setLocked(true);
		assertFalse(new RestackElements(List.of(d), back, 0).canApply());
		assertFalse(new RestackElements(List.of(a), front, 0).canApply());
	}

	@Test
	void layerTakesAStockAndGivesItUp() {
		assertReversible(new SetLayerStock(back, "card-270"));
		assertEquals("card-270", back.getStock());
		assertFalse(new SetLayerStock(back, " card-270 ").canApply());
		assertReversible(new SetLayerStock(back, ""));
		assertNull(back.getStock());
		back.setLocked(true);
		assertTrue(new SetLayerStock(back, "film").canApply());
	}

	@Test
	void layerIsAddedAtItsPlace() {
		AddLayer edit = new AddLayer(job, 1, "Film");
		assertReversible(edit);
		assertEquals(List.of("Mat", "Film", "Back", "Front"), job.getLayers().stream().map(Layer::getName).toList());
		assertEquals("l4", edit.layer().getId());
		assertFalse(new AddLayer(job, -1, "X").canApply());
		assertFalse(new AddLayer(job, 5, "X").canApply());
		assertFalse(new AddLayer(job, 0, " ").canApply());
	}

	@Test
	void layerGoesWithItsElementsAndTheMatsOfThem() {
		new GroupElements(List.of(a, c)).apply();
		assertReversible(new RemoveLayer(front));
		assertEquals(List.of(mats, back), job.getLayers());
		assertTrue(mats.getElements().isEmpty());
		assertTrue(job.getGroups().isEmpty());
	}

	@Test
	void matThatFollowsOthersTooStays() {
		mat.getBehind().add(a);
		assertReversible(new RemoveLayer(front));
		assertEquals(List.of(a), mat.getBehind());
		assertEquals(List.of(mat), mats.getElements());
	}

	@Test
	void matOfAMatGoesToo() {
		Mat outer = Jobs.addMat(mats, 2, List.of(mat));
		assertReversible(new RemoveLayer(front));
		assertFalse(Jobs.elements(job).contains(outer));
	}

	@Test
	void emptyLayerIsRemoved() {
		Layer empty = Jobs.addLayer(job, "Empty");
		assertReversible(new RemoveLayer(empty));
		assertFalse(new RemoveLayer(empty).canApply());
	}

	@Test
	void whatIsLockedKeepsALayerFromBeingRemoved() {
		mat.setLocked(true);
		assertFalse(new RemoveLayer(front).canApply());
		assertTrue(new RemoveLayer(back).canApply());
		a.setLocked(true);
		assertFalse(new RemoveLayer(back).canApply());
		a.setLocked(false);
		back.setLocked(true);
		assertFalse(new RemoveLayer(back).canApply());
	}

	@Test
	void copyOfALayerLiesAboveIt() {
		back.setColour("#102030");
		back.setStock("card-270");
		DuplicateLayer edit = new DuplicateLayer(back, "Back copy");
		assertReversible(edit);
		assertEquals(List.of("Mat", "Back", "Back copy", "Front"),
				job.getLayers().stream().map(Layer::getName).toList());
		assertEquals("#102030", edit.copy().getColour());
		assertEquals("card-270", edit.copy().getStock());
		assertEquals(2, edit.copy().getElements().size());
		assertEquals(5 + 2, Jobs.elements(job).stream().map(Element::getId).distinct().count());
	}

	@Test
	void copiedMatFollowsTheCopyOnlyOfWhatLiesOnItsLayer() {
		Mat near = Jobs.addMat(front, 1, List.of(c));
		DuplicateLayer edit = new DuplicateLayer(front, "Front copy");
		edit.apply();
		Mat copy = (Mat) edit.copy().getElements().get(2);
		assertEquals(List.of(edit.copy().getElements().get(0)), copy.getBehind());
		assertEquals(List.of(c), near.getBehind());
		DuplicateLayer far = new DuplicateLayer(mats, "Mat copy");
		far.apply();
		assertEquals(List.of(d), ((Mat) far.copy().getElements().get(0)).getBehind());
	}

	@Test
	void groupsWithinALayerAreCopiedWithIt() {
		new GroupElements(List.of(a, b)).apply();
		new GroupElements(List.of(a, b, c)).apply();
		DuplicateLayer edit = new DuplicateLayer(back, "Copy");
		assertReversible(edit);
		assertEquals(2, job.getGroups().size());
		assertEquals(edit.copy().getElements(), job.getGroups().get(1).getElements());
	}
}
