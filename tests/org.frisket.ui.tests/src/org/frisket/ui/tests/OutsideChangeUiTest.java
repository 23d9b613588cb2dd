package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.model.JobFile;
import org.frisket.model.Matrix;
import org.junit.jupiter.api.Test;

/** Other programs have hands too, and disks have ends. */
class OutsideChangeUiTest extends OpenBench {

	private static Shell window() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
	}

	/** The user goes to another window and comes back. */
	private static void comeBack() {
		Shell window = window();
		Shell elsewhere = new Shell(window.getDisplay(), SWT.SHELL_TRIM);
		elsewhere.setSize(200, 100);
		elsewhere.open();
		bringToFront(elsewhere);
		elsewhere.dispose();
		bringToFront(window);
	}

	private static void press(String label) {
		Button button = Dialogs.button(window(), label);
		Dialogs.press(button);
		Screen.settle();
	}

	private void move(double down) {
		edits().execute(new MoveElements(List.of(element(sample.plate)), 0, down));
	}

	/** As another program would: the same job with another title, and a longer file for it. */
	private void changeOutside() throws IOException {
		sample.job.setTitle("Ferry plate as somebody else has it");
		JobFile.save(sample.job, file);
	}

	private void reload(String titleThen) {
		comeBack();
		Screen.waitUntil("it is told", () -> bench.notice().contains("changed by another program"));
		press("Reload");
		Screen.waitUntil("the file is read", () -> titleThen.equals(bench.document().job().getTitle()));
		Screen.settle();
	}

	@Test
	void changedFileIsToldAndReloadedInOneStepThatCanBeUndone() throws IOException {
		String before = text(bench.document().job());
		move(7);
		String moved = text(bench.document().job());
		changeOutside();
		comeBack();
		Screen.waitUntil("it is told", () -> bench.notice().contains("changed by another program"));
		Screen.keep(Screen.picture(window()), "changed-outside");
		reload("Ferry plate as somebody else has it");
		assertSame(bench, page().getActiveEditor());
		assertEquals(Matrix.IDENTITY, element(sample.plate).getTransform());
		assertEquals(Files.readString(file), text(bench.document().job()));
		assertFalse(bench.isDirty());
		assertEquals("", bench.notice());
		assertEquals("Reload from file", bench.commandStack().getUndoCommand().getLabel());
		listen(bench);
		Screen.key("ctrl+z");
		assertEquals(moved, text(bench.document().job()));
		assertTrue(bench.isDirty());
		Screen.key("ctrl+z");
		assertEquals(before, text(bench.document().job()));
		assertTrue(bench.isDirty());
		Screen.key("ctrl+shift+z");
		Screen.key("ctrl+shift+z");
		assertEquals(Files.readString(file), text(bench.document().job()));
		assertFalse(bench.isDirty());
		// what was undone and not saved is asked about no more than any edit is
		Screen.key("ctrl+z");
		bench.doSave(new NullProgressMonitor());
		assertEquals(moved, Files.readString(file));
		assertFalse(bench.isDirty());
	}

	@Test
	void fileThatCannotBeReadAgainLeavesTheJobAsItIs() throws IOException {
		move(7);
		String moved = text(bench.document().job());
		Files.writeString(file, "<no job");
		comeBack();
		Screen.waitUntil("it is told", () -> bench.notice().contains("changed by another program"));
		press("Reload");
		Screen.waitUntil("the reason is told", () -> bench.notice().contains("still here"));
		assertTrue(bench.notice().contains(file.toString()), bench.notice());
		assertEquals(moved, text(bench.document().job()));
		assertTrue(bench.isDirty());
		// the other program comes to its end, and the button still helps
		changeOutside();
		press("Reload");
		Screen.waitUntil("the file is read", () -> !bench.isDirty());
		assertEquals(Files.readString(file), text(bench.document().job()));
		assertEquals("", bench.notice());
	}

	@Test
	void whatIsSelectedStaysSelectedWhereItIsStillThere() throws IOException {
		Screen.click(canvas(), pixelOf(120, 40).x, pixelOf(120, 40).y);
		List<String> selected = selectedIds();
		assertFalse(selected.isEmpty());
		changeOutside();
		reload("Ferry plate as somebody else has it");
		assertEquals(selected, selectedIds());
		bench.commandStack().undo();
		Screen.settle();
		assertEquals(selected, selectedIds());
	}

	@Test
	void reloadedJobIsSeenAsBefore() throws IOException {
		for (int i = 0; i < 3; i++) {
			bench.zoom().in();
		}
		bench.zoom().reveal(new org.frisket.geometry.Point(130, 50));
		Screen.settle();
		double scale = bench.zoom().scale();
		org.eclipse.draw2d.geometry.Point place = pixelOf(120, 40);
		changeOutside();
		reload("Ferry plate as somebody else has it");
		Screen.waitUntil("it is worked through", bench::isUpToDate);
		Screen.settle();
		assertEquals(scale, bench.zoom().scale());
		assertEquals(place, pixelOf(120, 40));
	}

	@Test
	void ownStateCanBeKeptAndIsThenSavedWithoutFurtherAsking() throws IOException {
		changeOutside();
		comeBack();
		Screen.waitUntil("it is told", () -> bench.notice().contains("changed by another program"));
		press("Keep Mine");
		assertTrue(bench.isDirty());
		bench.doSave(new NullProgressMonitor());
		assertFalse(bench.isDirty());
		assertEquals("Ferry plate", JobFile.load(file).getTitle());
	}

	@Test
	void removedFileCanBeSavedAgain() throws IOException {
		String before = Files.readString(file);
		Files.delete(file);
		comeBack();
		Screen.waitUntil("it is told", () -> bench.notice().contains("removed"));
		press("Save Again");
		assertEquals(before, Files.readString(file));
		assertFalse(bench.isDirty());
		assertEquals("", bench.notice());
	}

	@Test
	void removedFileMakesTheJobUnsavedWhenItIsKept() throws IOException {
		Files.delete(file);
		comeBack();
		Screen.waitUntil("it is told", () -> bench.notice().contains("removed"));
		press("Keep Mine");
		assertTrue(bench.isDirty());
		assertEquals("", bench.notice());
	}

	@Test
	void savingOverAChangeAsksFirst() throws IOException {
		move(7);
		changeOutside();
		NullProgressMonitor monitor = new NullProgressMonitor();
		List<String> read = Dialogs.answer("Cancel", () -> bench.doSave(monitor));
		assertTrue(read.stream().anyMatch(text -> text.contains("was changed by another program")), read::toString);
		assertTrue(monitor.isCanceled());
		assertTrue(bench.isDirty());
		Dialogs.answer("Replace", () -> bench.doSave(new NullProgressMonitor()));
		assertFalse(bench.isDirty());
		assertEquals("Ferry plate", JobFile.load(file).getTitle());
	}

	@Test
	void whatCannotBeSavedStaysAndWaysOutAreOffered() throws Exception {
		Path gone = Files.createDirectory(folder.resolve("gone"));
		Path place = gone.resolve("sample.frjob");
		bench.saveTo(place, new NullProgressMonitor());
		move(7);
		Files.delete(place);
		Files.delete(gone);
		NullProgressMonitor monitor = new NullProgressMonitor();
		List<String> read = Dialogs.answer("Cancel", () -> bench.doSave(monitor));
		assertTrue(read.stream().anyMatch(text -> text.contains("Nothing is lost")), read::toString);
		assertTrue(read.contains("Save As…"), read::toString);
		assertTrue(monitor.isCanceled());
		assertTrue(bench.isDirty());
		// somebody puts the folder back, and the same question is answered otherwise
		Dialogs.answer("Try Again", () -> bench.doSave(new NullProgressMonitor()), () -> mkdir(gone));
		assertFalse(bench.isDirty());
		Files.delete(place);
		Files.delete(gone);
	}

	private static void mkdir(Path folder) {
		try {
			Files.createDirectory(folder);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
