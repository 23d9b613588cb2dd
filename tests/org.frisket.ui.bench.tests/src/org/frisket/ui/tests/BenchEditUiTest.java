package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.ui.ThemeColour;
import org.junit.jupiter.api.Test;

/** Selecting, moving, deleting, undoing. */
class BenchEditUiTest extends OpenBench {

	@Test
	void dragMovesTheElementAndTheMatFollows() throws IOException {
		Point from = pixelOf(120, 40);
		int px = (int) Math.round(30 * bench.zoom().pixelsPerMm());
		Screen.drag(canvas(), from.x, from.y, from.x, from.y + px);
		Matrix moved = element(sample.disc).getTransform();
		assertEquals(0, moved.e(), 1e-12);
		assertEquals(30, moved.f(), 1 / bench.zoom().pixelsPerMm());
		assertTrue(bench.isDirty());
		Screen.waitUntil("the mat has followed", bench::isUpToDate);
		bench.fit();
		bench.viewer().deselectAll();
		// on a wide screen the place it went to may lie below the window
		bench.fit();
		ImageData picture = Screen.picture(canvas());
		Screen.keep(picture, "moved");
		assertColour(SampleJob.DISC_COLOUR, seenAt(picture, 120, 70));
		assertColour(SampleJob.MAT_COLOUR, seenAt(picture, 120, 70 + 20 + SampleJob.MAT_DISTANCE / 2));
		assertColour(ThemeColour.BENCH_SHEET.colour().getRGB(), seenAt(picture, 120, 20));
	}

	@Test
	void dragShowsAGhostAndLeavesTheJobAloneUntilTheDrop() throws IOException {
		Point from = pixelOf(120, 40);
		Screen.moveTo(canvas(), from.x, from.y);
		Screen.pressButton();
		Screen.moveTo(canvas(), from.x + 20, from.y + 20);
		Screen.moveTo(canvas(), from.x + 60, from.y + 120);
		ImageData during = Screen.picture(canvas());
		Screen.keep(during, "ghost");
		assertEquals(Matrix.IDENTITY, element(sample.disc).getTransform());
		Screen.key("Escape");
		Screen.releaseButton();
		assertEquals(Matrix.IDENTITY, element(sample.disc).getTransform());
		assertFalse(bench.isDirty());
		// a place that only the ghost reaches: below the mat, in the lower part of the moved disc
		RGB under = Screen.pixel(during, from.x + 60, from.y + 120 + 60);
		assertFalse(under.equals(ThemeColour.BENCH_SHEET.colour().getRGB()), "no ghost is seen");
	}

	@Test
	void undoAndRedoByKeyTakeTheMoveBackAndMakeItAgain() throws IOException {
		String before = text(bench.document().job());
		Point from = pixelOf(120, 40);
		Screen.drag(canvas(), from.x, from.y, from.x + 40, from.y);
		String after = text(bench.document().job());
		assertFalse(before.equals(after));
		Screen.key("ctrl+z");
		assertEquals(before, text(bench.document().job()));
		assertFalse(bench.isDirty());
		Screen.waitUntil("the mat is back", bench::isUpToDate);
		assertColour(SampleJob.DISC_COLOUR, seenAt(120, 40));
		// the platform's key for it under GTK
		Screen.key("ctrl+shift+z");
		assertEquals(after, text(bench.document().job()));
	}

	@Test
	void windowInThePlateLetsThePointerThrough() {
		Point hole = pixelOf(50, 40);
		Screen.click(canvas(), hole.x, hole.y);
		assertEquals(List.of(), selectedIds());
		Point plate = pixelOf(30, 30);
		Screen.click(canvas(), plate.x, plate.y);
		assertEquals(List.of(sample.plate.getId()), selectedIds());
	}

	@Test
	void menuNamesWhatCanBeUndone() {
		Point from = pixelOf(120, 40);
		Screen.drag(canvas(), from.x, from.y, from.x + 40, from.y);
		MenuItem undo = menuItem("Edit", "Undo");
		assertTrue(undo.getText().startsWith("&Undo Move outline"), undo.getText());
		assertTrue(undo.isEnabled());
		bench.commandStack().undo();
		Screen.settle();
		MenuItem redo = menuItem("Edit", "Redo");
		assertTrue(redo.getText().startsWith("&Redo Move outline"), redo.getText());
		assertFalse(menuItem("Edit", "Undo").isEnabled());
	}

	private static MenuItem menuItem(String menuName, String itemName) {
		Menu bar = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell().getMenuBar();
		Menu menu = find(bar, menuName).getMenu();
		menu.notifyListeners(SWT.Show, new Event());
		Screen.settle();
		return find(menu, itemName);
	}

	private static MenuItem find(Menu menu, String name) {
		for (MenuItem item : menu.getItems()) {
			if (item.getText().replace("&", "").startsWith(name)) {
				return item;
			}
		}
		throw new AssertionError("no " + name + " in " + Stream.of(menu.getItems()).map(MenuItem::getText).toList());
	}

	@Test
	void boxTakesWhatLiesWhollyInside() throws IOException {
		Point from = pixelOf(96, 16);
		Point to = pixelOf(146, 66);
		Screen.drag(canvas(), from.x, from.y - 30, to.x, to.y + 10);
		assertEquals(List.of(sample.disc.getId()), selectedIds());
		ImageData picture = Screen.picture(canvas());
		Screen.keep(picture, "selected");
		assertColour(ThemeColour.BENCH_SELECTION.colour().getRGB(), seenAt(picture, 140, 40));
	}

	@Test
	void arrowKeysNudge() {
		Point disc = pixelOf(120, 40);
		Screen.click(canvas(), disc.x, disc.y);
		Screen.key("Right");
		assertEquals(Matrix.translation(1, 0), element(sample.disc).getTransform());
		Screen.key("shift+Down");
		assertEquals(Matrix.translation(1, 10), element(sample.disc).getTransform());
		Screen.key("ctrl+Left");
		assertEquals(Matrix.translation(0.9, 10), element(sample.disc).getTransform());
	}

	@Test
	void deleteKeyDeletesAndUndoBringsBack() {
		Point disc = pixelOf(120, 40);
		Screen.click(canvas(), disc.x, disc.y);
		Screen.key("Delete");
		assertTrue(Jobs.element(bench.document().job(), sample.disc.getId()).isEmpty());
		Screen.key("ctrl+z");
		assertTrue(Jobs.element(bench.document().job(), sample.disc.getId()).isPresent());
		Screen.waitUntil("the disc is back", bench::isUpToDate);
		assertColour(SampleJob.DISC_COLOUR, seenAt(120, 40));
	}

	@Test
	void editsFromElsewhereRunThroughTheSameStack() {
		edits().execute(new MoveElements(List.of(element(sample.plate)), 3, 4));
		assertTrue(bench.commandStack().canUndo());
		bench.commandStack().undo();
		assertEquals(Matrix.IDENTITY, element(sample.plate).getTransform());
	}
}
