package org.frisket.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.elements.AddElement;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.layers.RenameLayer;
import org.frisket.editing.shapes.SetMatDistance;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.model.Alignment;
import org.frisket.model.Element;
import org.frisket.model.FontRef;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A wording and a dot; a mat behind both, one behind the dot, and one behind that mat. */
class EditsTest {

	private Job job;
	private Layer front;
	private Layer back;
	private Wording wording;
	private Element dot;
	private Mat both;
	private Mat single;
	private Mat outer;

	@BeforeEach
	void makeJob() {
		job = Jobs.create("tags", "Gift tags");
		front = Jobs.addLayer(job, "Front");
		back = Jobs.addLayer(job, "Back");
		wording = Jobs.addWording(front, "For you", 12);
		dot = Jobs.addOutline(front, "M0 0L1 0L1 1Z");
		both = Jobs.addMat(back, 3, List.of(wording, dot));
		single = Jobs.addMat(back, 2, List.of(dot));
		outer = Jobs.addMat(back, 6, List.of(single));
	}

	private static String text(Job job) {
		try {
			return new String(JobFile.toBytes(job), StandardCharsets.UTF_8);
		} catch (IOException e) {
			throw new AssertionError(e);
		}
	}

	/** Applies, undoes and redoes, and holds the file against what it was. */
	private void assertReversible(Edit edit) {
		String before = text(job);
		assertTrue(edit.canApply());
		edit.apply();
		String after = text(job);
		assertFalse(before.equals(after));
		for (int i = 0; i < 3; i++) {
			edit.undo();
			assertEquals(before, text(job));
			edit.redo();
			assertEquals(after, text(job));
		}
	}

	@Test
	void moveShiftsAfterWhatTheTransformDid() {
		dot.setTransform(new Matrix(2, 0, 0, 2, 5, 5));
		assertReversible(new MoveElements(List.of(dot, wording), 1.5, -2));
		assertEquals(new Matrix(2, 0, 0, 2, 6.5, 3), dot.getTransform());
		assertEquals(Matrix.translation(1.5, -2), wording.getTransform());
	}

	@Test
	void matMovesOnceWithWhatItFollows() {
		assertReversible(new MoveElements(List.of(dot, single, outer), 4, 0));
		assertEquals(Matrix.translation(4, 0), dot.getTransform());
		assertEquals(Matrix.IDENTITY, single.getTransform());
		assertEquals(Matrix.IDENTITY, outer.getTransform());
	}

	@Test
	void matAloneMovesAwayFromWhatItFollows() {
		assertReversible(new MoveElements(List.of(single), 4, 0));
		assertEquals(Matrix.translation(4, 0), single.getTransform());
	}

	@Test
	void ringOfMatsMovesAsAWhole() {
		single.getBehind().add(outer);
		assertReversible(new MoveElements(List.of(single, outer), 1, 1));
		assertEquals(Matrix.translation(1, 1), single.getTransform());
		assertEquals(Matrix.translation(1, 1), outer.getTransform());
	}

	@Test
	void elementNamedTwiceMovesOnce() {
		assertReversible(new MoveElements(List.of(dot, dot), 1, 0));
		assertEquals(Matrix.translation(1, 0), dot.getTransform());
	}

	@Test
	void movesThatChangeNothingOrCannotBeAreNotApplicable() {
		assertFalse(new MoveElements(List.of(), 1, 1).canApply());
		assertFalse(new MoveElements(List.of(dot), 0, 0).canApply());
		assertFalse(new MoveElements(List.of(dot), Double.NaN, 0).canApply());
		assertFalse(new MoveElements(List.of(FrisketFactory.INSTANCE.createMat()), 1, 1).canApply());
		assertFalse(new MoveElements(List.of(dot, EcoreUtil.copy(job).getLayers().get(0).getElements().get(0)), 1, 1)
				.canApply());
	}

	@Test
	void deletedElementLeavesItsMats() {
		assertReversible(new DeleteElements(List.of(wording)));
		assertEquals(List.of(dot), both.getBehind());
		assertEquals(List.of("e2", "e3", "e4", "e5"), Jobs.elements(job).stream().map(Element::getId).toList());
	}

	@Test
	void deletedPathIsLeftByItsWording() {
		wording.setPath((Outline) dot);
		assertReversible(new DeleteElements(List.of(dot)));
		assertNull(wording.getPath());
	}

	@Test
	void matsWithNothingLeftAreDeletedToo() {
		Mat empty = Jobs.addMat(back, 1, List.of());
		assertReversible(new DeleteElements(List.of(dot)));
		assertEquals(List.of(wording), both.getBehind());
		assertEquals(List.of(wording, both, empty), Jobs.elements(job));
		assertNull(Jobs.jobOf(single));
		assertNull(Jobs.jobOf(outer));
	}

	@Test
	void lockedLayersKeepTheirElements() {
		back.setLocked(true);
		assertFalse(new MoveElements(List.of(single), 1, 1).canApply());
		assertFalse(new SetMatDistance(single, 9).canApply());
		assertFalse(new AddElement(back, FrisketFactory.INSTANCE.createMat()).canApply());
		assertFalse(new DeleteElements(List.of(dot)).canApply());
		assertTrue(new DeleteElements(List.of(wording)).canApply());
		assertTrue(new RenameLayer(back, "Behind").canApply());
		front.setLocked(true);
		assertFalse(ChangeWording.text(wording, "For me").canApply());
	}

	@Test
	void addedElementGetsAnIdOfTheJob() {
		Mat mat = FrisketFactory.INSTANCE.createMat();
		mat.getBehind().add(wording);
		assertReversible(new AddElement(front, mat, 1));
		assertEquals("e6", mat.getId());
		assertEquals(List.of(wording, mat, dot), front.getElements());
		Element copy = EcoreUtil.copy(dot);
		new AddElement(front, copy).apply();
		assertEquals("e7", copy.getId());
		assertFalse(new AddElement(back, copy).canApply());
		assertFalse(new AddElement(back, EcoreUtil.copy(dot), 9).canApply());
	}

	@Test
	void wordingIsChanged() {
		FontRef font = Jobs.font("Bitter", "Bold", "00", null);
		assertReversible(ChangeWording.text(wording, "For\nme"));
		assertReversible(ChangeWording.font(wording, font));
		assertNotSame(font, wording.getFont());
		assertReversible(ChangeWording.height(wording, 14.5));
		assertReversible(ChangeWording.lineSpacing(wording, 1.2));
		assertReversible(ChangeWording.tracking(wording, -0.1));
		assertReversible(ChangeWording.alignment(wording, Alignment.RIGHT));
		assertReversible(ChangeWording.join(wording, 0.4));
		assertTrue(wording.isJoined());
		assertReversible(ChangeWording.part(wording));
		assertFalse(ChangeWording.font(wording, font).canApply());
		assertFalse(ChangeWording.text(wording, "For\nme").canApply());
		assertFalse(ChangeWording.height(wording, 0).canApply());
		assertFalse(ChangeWording.height(wording, Double.NaN).canApply());
		assertFalse(ChangeWording.join(wording, -1).canApply());
		assertFalse(ChangeWording.part(wording).canApply());
	}

	@Test
	void layerAndMatAreChanged() {
		assertReversible(new RenameLayer(front, "Lettering"));
		assertReversible(new SetMatDistance(both, -1.5));
		assertFalse(new RenameLayer(front, "Lettering").canApply());
		assertFalse(new RenameLayer(front, " ").canApply());
		assertFalse(new SetMatDistance(both, -1.5).canApply());
	}

	@Test
	void namesSayWhatIsDone() {
		assertEquals("Move wording", new MoveElements(List.of(wording), 1, 1).name());
		assertEquals("Delete 2 elements", new DeleteElements(List.of(wording, dot)).name());
		assertEquals("Add mat", new AddElement(front, FrisketFactory.INSTANCE.createMat()).toString());
	}

	@Test
	void nothingKeepsWatchingAfterwards() {
		int watchers = job.eAdapters().size() + dot.eAdapters().size();
		new DeleteElements(List.of(wording)).apply();
		assertEquals(watchers, job.eAdapters().size() + dot.eAdapters().size());
	}

	@Test
	void failedChangeIsTakenBack() {
		String before = text(job);
		Edit edit = new RecordingEdit("Stumble") {

			@Override
			public boolean canApply() {
				return true;
			}

			@Override
			protected Collection<? extends EObject> scope() {
				return List.of(job);
			}

			@Override
			protected void change() {
				front.setName("half done");
				back.getElements().clear();
				throw new IllegalStateException("stumbled");
			}
		};
		EditHistory history = new EditHistory();
		assertEquals("stumbled", assertThrows(IllegalStateException.class, () -> history.execute(edit)).getMessage());
		assertEquals(before, text(job));
		assertFalse(history.canUndo());
		assertTrue(job.eAdapters().isEmpty());
	}

	@Test
	void editsAreAppliedOnceAndInTurn() {
		Edit edit = new RenameLayer(front, "Lettering");
		assertThrows(IllegalStateException.class, edit::undo);
		edit.apply();
		assertThrows(IllegalStateException.class, edit::apply);
		assertThrows(IllegalStateException.class, edit::redo);
		edit.undo();
		assertThrows(IllegalStateException.class, edit::undo);
		assertThrows(IllegalStateException.class, () -> new RenameLayer(front, "").apply());
	}

	@Test
	void undoBringsTheSameObjectsBack() {
		Edit edit = new DeleteElements(List.of(dot));
		edit.apply();
		edit.undo();
		assertSame(dot, front.getElements().get(1));
		assertSame(single, outer.getBehind().get(0));
	}
}
