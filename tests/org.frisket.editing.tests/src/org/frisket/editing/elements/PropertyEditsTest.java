package org.frisket.editing.elements;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.editing.Edit;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.shapes.ChangePath;
import org.frisket.editing.shapes.StandMatBehind;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Operations by their place, what a mat follows, names, and what is shown and locked. */
class PropertyEditsTest {

	private Job job;
	private Layer front;
	private Wording wording;
	private Outline dot;

	@BeforeEach
	void makeJob() {
		job = Jobs.create("tags", "Gift tags");
		front = Jobs.addLayer(job, "Front");
		wording = Jobs.addWording(front, "For you", 12);
		dot = Jobs.addOutline(front, "M0 0L0 1L1 1Z");
		Jobs.addOperation(wording, OperationKind.DRAW);
		Jobs.addOperation(wording, OperationKind.CUT);
		Jobs.addOperation(dot, OperationKind.CUT);
	}

	/** Applies, checks that undo brings the first bytes and redo the changed ones, and leaves it applied. */
	private void apply(Edit edit) {
		try {
			byte[] before = JobFile.toBytes(job);
			assertTrue(edit.canApply(), edit.name());
			edit.apply();
			byte[] after = JobFile.toBytes(job);
			edit.undo();
			assertArrayEquals(before, JobFile.toBytes(job), edit.name());
			edit.redo();
			assertArrayEquals(after, JobFile.toBytes(job), edit.name());
		} catch (IOException e) {
			throw new AssertionError(e);
		}
	}

	private static List<OperationKind> kinds(Element element) {
		return element.getOperations().stream().map(operation -> operation.getKind()).toList();
	}

	@Test
	void oneOperationIsChangedByItsPlace() {
		apply(ChangeOperation.kind(List.of(wording), 0, OperationKind.CREASE));
		assertEquals(List.of(OperationKind.CREASE, OperationKind.CUT), kinds(wording));
		apply(ChangeOperation.tool(List.of(wording), 1, " fine blade "));
		assertEquals("fine blade", wording.getOperations().get(1).getTool());
		assertNull(wording.getOperations().get(0).getTool());
		apply(ChangeOperation.tool(List.of(wording), 1, ""));
		assertNull(wording.getOperations().get(1).getTool());
		apply(ChangeOperation.passes(List.of(wording), 1, 3));
		assertEquals(3, wording.getOperations().get(1).getPasses());
		assertEquals(1, wording.getOperations().get(0).getPasses());
	}

	@Test
	void severalElementsAreChangedWhereTheyHaveThePlace() {
		List<Element> both = List.of(wording, dot);
		apply(ChangeOperation.passes(both, 1, 4));
		assertEquals(1, dot.getOperations().get(0).getPasses());
		apply(ChangeOperation.kind(both, 0, OperationKind.PERFORATE));
		assertEquals(List.of(OperationKind.PERFORATE), kinds(dot));
		apply(ChangeOperation.add(both, OperationKind.PRINT));
		assertEquals(3, wording.getOperations().size());
		assertEquals(2, dot.getOperations().size());
	}

	@Test
	void operationsAreRemovedAndReordered() {
		apply(ChangeOperation.earlier(List.of(wording), 1));
		assertEquals(List.of(OperationKind.CUT, OperationKind.DRAW), kinds(wording));
		apply(ChangeOperation.remove(List.of(wording, dot), 0));
		assertEquals(List.of(OperationKind.DRAW), kinds(wording));
		assertEquals(List.of(), kinds(dot));
	}

	@Test
	void operationsThatAreNotThereOrNotAllowedChangeNothing() {
		List<Element> one = List.of(wording);
		assertFalse(ChangeOperation.kind(one, 2, OperationKind.CUT).canApply());
		assertFalse(ChangeOperation.kind(one, -1, OperationKind.CUT).canApply());
		assertFalse(ChangeOperation.kind(one, 1, OperationKind.CUT).canApply());
		assertFalse(ChangeOperation.passes(one, 0, 0).canApply());
		assertFalse(ChangeOperation.passes(one, 0, ChangeOperation.MOST_PASSES + 1).canApply());
		assertFalse(ChangeOperation.earlier(one, 0).canApply());
		assertFalse(ChangeOperation.remove(one, 2).canApply());
		assertFalse(ChangeOperation.add(List.of(), OperationKind.CUT).canApply());
		front.setLocked(true);
		assertFalse(ChangeOperation.add(one, OperationKind.CUT).canApply());
	}

	@Test
	void manyRandomChangesOfOperationsAreUndoneToTheFirstBytes() throws IOException {
		byte[] first = JobFile.toBytes(job);
		Random random = new Random(17);
		List<Edit> done = new ArrayList<>();
		List<Element> both = List.of(wording, dot);
		for (int i = 0; i < 400; i++) {
			int place = random.nextInt(5) - 1;
			List<Element> some = random.nextBoolean() ? both : List.of(both.get(random.nextInt(2)));
			OperationKind kind = OperationKind.values()[random.nextInt(OperationKind.values().length)];
			Edit edit = switch (random.nextInt(6)) {
			case 0 -> ChangeOperation.kind(some, place, kind);
			case 1 -> ChangeOperation.tool(some, place, "tool " + random.nextInt(3));
			case 2 -> ChangeOperation.passes(some, place, random.nextInt(5));
			case 3 -> ChangeOperation.add(some, kind);
			case 4 -> ChangeOperation.remove(some, place);
			default -> ChangeOperation.earlier(some, place);
			};
			if (edit.canApply()) {
				edit.apply();
				done.add(edit);
			}
		}
		assertTrue(done.size() > 100);
		for (int i = done.size() - 1; i >= 0; i--) {
			done.get(i).undo();
		}
		assertArrayEquals(first, JobFile.toBytes(job));
	}

	@Test
	void matFollowsOtherElements() {
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 3, List.of(wording));
		apply(StandMatBehind.elements(mat, List.of(dot, wording)));
		assertEquals(List.of(wording, dot), mat.getBehind());
		assertFalse(StandMatBehind.elements(mat, List.of(wording, dot)).canApply());
		assertFalse(StandMatBehind.elements(mat, List.of()).canApply());
		assertFalse(StandMatBehind.elements(mat, List.of(mat)).canApply());
	}

	@Test
	void matIsNeverStoodBehindWhatFollowsIt() {
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 3, List.of(wording));
		Mat outer = Jobs.addMat(Jobs.addLayer(job, "Outer"), 6, List.of(mat));
		assertFalse(StandMatBehind.elements(mat, List.of(outer)).canApply());
	}

	@Test
	void matIsTakenOutOfItsRing() {
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 3, List.of(wording));
		Mat outer = Jobs.addMat(Jobs.addLayer(job, "Outer"), 6, List.of(mat));
		mat.getBehind().add(outer);
		apply(StandMatBehind.outOfRing(mat));
		assertEquals(List.of(wording), mat.getBehind());
		assertFalse(StandMatBehind.outOfRing(mat).canApply());
	}

	@Test
	void elementsAreNamed() {
		apply(new RenameElements(List.of(wording, dot), "  Ferry "));
		assertEquals("Ferry", dot.getName());
		apply(new RenameElements(List.of(dot), " "));
		assertNull(dot.getName());
		assertFalse(new RenameElements(List.of(dot), "").canApply());
		dot.setLocked(true);
		assertFalse(new RenameElements(List.of(dot), "Dot").canApply());
	}

	@Test
	void elementsAreHiddenAndLockedAndFreedAgain() {
		apply(SetElements.visible(List.of(wording, dot), false));
		assertFalse(dot.isVisible());
		assertFalse(SetElements.visible(List.of(dot), false).canApply());
		apply(SetElements.locked(List.of(dot), true));
		assertFalse(new MoveElements(List.of(dot), 1, 1).canApply());
		apply(SetElements.locked(List.of(dot), false));
		apply(SetElements.visible(List.of(dot), true));
		assertTrue(dot.isVisible());
	}

	@Test
	void pathIsRepaired() {
		Edit repair = ChangePath.repaired("Close contour", dot, "M0 0L0 2L2 2Z");
		apply(repair);
		assertEquals("Close contour", repair.name());
		assertFalse(ChangePath.repaired("Close contour", dot, "M0 0L0 2L2 2Z").canApply());
		assertFalse(ChangePath.repaired("Close contour", dot, null).canApply());
	}
}
