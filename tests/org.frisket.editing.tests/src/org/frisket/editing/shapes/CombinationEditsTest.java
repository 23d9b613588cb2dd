package org.frisket.editing.shapes;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;

import org.frisket.editing.Edit;
import org.frisket.editing.JobFragment;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.elements.DuplicateElements;
import org.frisket.model.Combination;
import org.frisket.model.CombinationRule;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.WeedLines;
import org.junit.jupiter.api.Test;

/** Two squares and a line across them, and what is made of them. */
class CombinationEditsTest {

	private final Job job = Jobs.create("tags", "Gift tags");
	private final Layer front = Jobs.addLayer(job, "Front");
	private final Outline one = Jobs.addOutline(front, "M0 0v9h9v-9z");
	private final Outline other = Jobs.addOutline(front, "M5 0v9h9v-9z");
	private final Outline line = Jobs.addOutline(front, "M0 4h20");

	private Combination combined(CombinationRule rule, Element... parts) {
		CombineElements edit = CombineElements.by(rule, List.of(parts));
		assertTrue(edit.canApply());
		edit.apply();
		return edit.combinations().get(0);
	}

	private void assertUndone(Edit edit) throws IOException {
		byte[] before = JobFile.toBytes(job);
		assertTrue(edit.canApply(), edit.name());
		edit.apply();
		byte[] after = JobFile.toBytes(job);
		assertArrayEquals(after, JobFile.toBytes(JobFile.load(after, "again")), edit.name());
		edit.undo();
		assertArrayEquals(before, JobFile.toBytes(job), edit.name());
		edit.redo();
		assertArrayEquals(after, JobFile.toBytes(job), edit.name());
	}

	@Test
	void combinationLiesOnTheLayerOfItsFirstPartAndIsWorkedAsThatIs() throws IOException {
		Jobs.addOperation(one, OperationKind.CREASE).setTool("wheel");
		assertUndone(CombineElements.by(CombinationRule.SUBTRACT, List.of(one, other)));
		Combination made = (Combination) front.getElements().get(3);
		assertEquals(List.of(one, other), made.getParts());
		assertEquals("wheel", made.getOperations().get(0).getTool());
		assertEquals(Set.of(one, other), Jobs.parts(job));
		assertFalse(CombineElements.by(CombinationRule.UNITE, List.of(one)).canApply(), "one is no combination");
		one.setLocked(true);
		assertFalse(CombineElements.by(CombinationRule.UNITE, List.of(one, other)).canApply(), "locked");
	}

	@Test
	void splitMakesBothSides() throws IOException {
		assertUndone(CombineElements.split(List.of(one, other, line)));
		assertEquals(List.of(CombinationRule.LEFT, CombinationRule.RIGHT), front.getElements().subList(3, 5).stream()
				.map(each -> ((Combination) each).getRule()).toList());
	}

	@Test
	void deletedPartLeavesItsCombinationAndTheLastOneTakesItAlong() throws IOException {
		Combination made = combined(CombinationRule.UNITE, one, other);
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 2, List.of(made));
		assertUndone(new DeleteElements(List.of(one)));
		assertEquals(List.of(other), made.getParts());
		assertUndone(new DeleteElements(List.of(other)));
		assertEquals(List.of(line), Jobs.elements(job));
		assertEquals(null, Jobs.layerOf(mat));
	}

	@Test
	void deletedCombinationGivesItsPartsBack() throws IOException {
		Combination made = combined(CombinationRule.UNITE, one, other);
		assertUndone(new DeleteElements(List.of(made)));
		assertEquals(List.of(one, other, line), Jobs.elements(job));
		assertEquals(Set.of(), Jobs.parts(job));
	}

	@Test
	void removedMatIsFollowedNoMore() throws IOException {
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 2, List.of(one));
		Combination made = combined(CombinationRule.SUBTRACT, other, mat);
		assertUndone(new RemoveMat(mat));
		assertEquals(List.of(other, one), made.getParts());
	}

	@Test
	void ringsAreRefused() {
		Combination inner = combined(CombinationRule.UNITE, one, other);
		Combination outer = combined(CombinationRule.SUBTRACT, inner, line);
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 2, List.of(outer));
		assertFalse(ChangeCombination.parts(inner, List.of(one, outer)).canApply());
		assertFalse(ChangeCombination.parts(inner, List.of(one, mat)).canApply());
		assertFalse(ChangeCombination.parts(inner, List.of(one, inner)).canApply());
		assertFalse(StandMatBehind.elements(mat, List.of(mat, one)).canApply());
		assertTrue(ChangeCombination.parts(outer, List.of(inner, one)).canApply());
	}

	@Test
	void partsAreReorderedAndExchanged() throws IOException {
		Combination made = combined(CombinationRule.SUBTRACT, one, other);
		assertUndone(ChangeCombination.first(made, other));
		assertEquals(List.of(other, one), made.getParts());
		assertFalse(ChangeCombination.first(made, other).canApply());
		assertUndone(ChangeCombination.parts(made, List.of(line, one)));
		assertEquals(List.of(line, one), made.getParts());
		assertFalse(ChangeCombination.parts(made, List.of()).canApply());
		assertUndone(ChangeCombination.rule(List.of(made), CombinationRule.EXCLUDE));
	}

	@Test
	void copiesAreMadeOfCopies() throws IOException {
		Combination made = combined(CombinationRule.SUBTRACT, one, other);
		DuplicateElements edit = new DuplicateElements(List.of(one, other, made), 10, 0);
		edit.apply();
		Combination copy = (Combination) edit.copies().get(2);
		assertEquals(edit.copies().subList(0, 2), copy.getParts());
		assertEquals(made.getTransform(), copy.getTransform(), "comes along with its parts");
		edit.undo();
		Job fragment = JobFragment.read(JobFragment.write(List.of(one, made))).orElseThrow();
		Combination carried = (Combination) Jobs.elements(fragment).get(1);
		assertEquals(List.of(Jobs.elements(fragment).get(0)), carried.getParts());
		assertEquals(0, Jobs.elements(JobFragment.read(JobFragment.write(List.of(made))).orElseThrow()).size());
	}

	@Test
	void movedPartsTakeTheirCombinationAlong() {
		Combination made = combined(CombinationRule.UNITE, one, other);
		new MoveElements(List.of(one, other, made), 3, 4).apply();
		assertEquals(3, one.getTransform().e());
		assertEquals(0, made.getTransform().e());
	}

	@Test
	void weedLinesLieBelowWhatTheyGoRound() throws IOException {
		assertUndone(new AddWeedLines(List.of(one, other)));
		WeedLines lines = (WeedLines) front.getElements().get(0);
		assertEquals(List.of(one, other), lines.getAround());
		assertFalse(new AddWeedLines(List.of(lines)).canApply());
		assertUndone(ChangeWeedLines.margin(List.of(lines), 8));
		assertFalse(ChangeWeedLines.margin(List.of(lines), 0).canApply());
		assertUndone(ChangeWeedLines.between(List.of(lines), false));
		assertUndone(ChangeWeedLines.spacing(List.of(lines), 12));
		assertUndone(ChangeWeedLines.clearance(List.of(lines), 0));
		assertUndone(ChangeWeedLines.around(lines, List.of(one)));
		assertFalse(ChangeWeedLines.around(lines, List.of(one, lines)).canApply());
		assertUndone(new DeleteElements(List.of(one)));
		assertEquals(List.of(other, line), Jobs.elements(job));
	}

	@Test
	void cornersOfShapesAreRoundedAndOfWordingsAreNot() throws IOException {
		Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 2, List.of(one));
		assertUndone(new RoundCorners(List.of(one, mat, combined(CombinationRule.UNITE, one, other)), 2));
		assertEquals(2, one.getCornerRadius());
		assertEquals(2, mat.getCornerRadius());
		assertFalse(new RoundCorners(List.of(one), 2).canApply());
		assertFalse(new RoundCorners(List.of(one), -1).canApply());
		assertFalse(new RoundCorners(List.of(Jobs.addWording(front, "Tide", 9)), 1).canApply());
	}

	/** What older suites wrote is written the same by this one. */
	@Test
	void whatIsNotSetIsNotWritten() throws IOException {
		Jobs.addOperation(one, OperationKind.PERFORATE);
		Jobs.addMat(Jobs.addLayer(job, "Mat"), 2, List.of(one));
		String file = new String(JobFile.toBytes(job), StandardCharsets.UTF_8);
		for (String name : List.of("form", "reach", "shadow", "frame", "cornerRadius", "smallestHole", "dash", "gap")) {
			assertFalse(file.contains(name + "="), name);
		}
	}
}
