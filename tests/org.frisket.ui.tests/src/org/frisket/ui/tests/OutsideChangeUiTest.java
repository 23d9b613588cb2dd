package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import org.frisket.editing.MoveElements;
import org.frisket.model.JobFile;
import org.frisket.model.Matrix;
import org.frisket.ui.bench.internal.editor.BenchEditor;
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

	@Test
	void changedFileIsToldAndCanBeReloaded() throws IOException {
		move(7);
		changeOutside();
		comeBack();
		Screen.waitUntil("it is told", () -> bench.notice().contains("changed by another program"));
		Screen.keep(Screen.picture(window()), "changed-outside");
		press("Reload");
		bench = (BenchEditor) page().getActiveEditor();
		assertEquals("Ferry plate as somebody else has it", bench.document().job().getTitle());
		assertEquals(Matrix.IDENTITY, element(sample.plate).getTransform());
		assertFalse(bench.isDirty());
		assertEquals("", bench.notice());
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
		comeBack();
		Screen.waitUntil("it is told", () -> bench.notice().contains("changed by another program"));
		press("Reload");
		bench = (BenchEditor) page().getActiveEditor();
		Screen.waitUntil("it is worked through", bench::isUpToDate);
		Screen.settle();
		assertEquals(scale, bench.zoom().scale(), scale / 100);
		assertEquals(place.x, pixelOf(120, 40).x, 4);
		// the line about the file took some height of the first bench
		assertEquals(place.y, pixelOf(120, 40).y, 40);
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
