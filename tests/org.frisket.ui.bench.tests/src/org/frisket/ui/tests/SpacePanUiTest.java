package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.geometry.Point;
import org.frisket.model.Jobs;
import org.frisket.ui.bench.UntitledInput;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.parts.Selection;
import org.junit.jupiter.api.Test;

/** The bench is pushed about with the space bar held, and in no other case does the space bar do anything but write. */
class SpacePanUiTest extends OpenBench {

	private void dragWithSpace(int fromX, int fromY, int toX, int toY) {
		Screen.moveTo(canvas(), fromX, fromY);
		Screen.holding("space", () -> Screen.drag(canvas(), fromX, fromY, toX, toY));
	}

	@Test
	void dragMovesTheViewAndNothingElse() throws Exception {
		String before = text(bench.document().job());
		Point disc = pixelOf(120, 40);
		dragWithSpace(disc.x, disc.y, disc.x - 40, disc.y + 30);
		Point after = pixelOf(120, 40);
		assertEquals(disc.x - 40, after.x, 2);
		assertEquals(disc.y + 30, after.y, 2);
		assertEquals(before, text(bench.document().job()));
		assertFalse(bench.commandStack().canUndo());
		assertEquals(List.of(), selectedIds());
	}

	@Test
	void gripUnderThePointerIsLeftAlone() throws Exception {
		Selection.select(bench.viewer(), List.of(element(sample.disc)));
		Screen.settle();
		String before = text(bench.document().job());
		Point corner = pixelOf(140, 60);
		dragWithSpace(corner.x, corner.y, corner.x + 30, corner.y + 30);
		assertEquals(before, text(bench.document().job()));
		assertEquals(List.of(sample.disc.getId()), selectedIds());
	}

	@Test
	void cursorSaysSo() {
		Screen.moveTo(canvas(), 30, 30);
		var before = canvas().getCursor();
		Screen.holding("space", () -> assertSame(Cursors.HAND, canvas().getCursor()));
		assertEquals(before, canvas().getCursor());
	}

	@Test
	void dragWithoutSpaceStillMovesTheElementAfterwards() throws Exception {
		Point disc = pixelOf(120, 40);
		dragWithSpace(disc.x, disc.y, disc.x + 10, disc.y + 10);
		Point now = pixelOf(120, 40);
		Screen.drag(canvas(), now.x, now.y, now.x + 30, now.y);
		assertNotEquals(0, element(sample.disc).getTransform().e());
	}

	@Test
	void spaceOnAnEmptyBenchBeginsNoWording() throws Exception {
		BenchEditor blank = (BenchEditor) page().openEditor(new UntitledInput(1), Bench.EDITOR_ID);
		bench = blank;
		Screen.waitUntil("the empty job is worked through", blank::isUpToDate);
		listen(blank);
		Point before = pixelOf(10, 10);
		dragWithSpace(200, 200, 230, 215);
		Point after = pixelOf(10, 10);
		assertEquals(before.x + 30, after.x, 2);
		assertEquals(before.y + 15, after.y, 2);
		assertFalse(blank.typing().isActive());
		assertTrue(Jobs.elements(blank.document().job()).isEmpty());
		Screen.type("Ferry");
		assertEquals("Ferry", blank.typing().text());
	}

	@Test
	void spaceInAWordingIsABlank() throws Exception {
		BenchEditor blank = (BenchEditor) page().openEditor(new UntitledInput(1), Bench.EDITOR_ID);
		bench = blank;
		Screen.waitUntil("the empty job is worked through", blank::isUpToDate);
		listen(blank);
		Screen.type("Harbour Lane");
		assertEquals("Harbour Lane", blank.typing().text());
		Screen.key("Escape");
		assertEquals(1, Jobs.elements(blank.document().job()).size());
	}
}
