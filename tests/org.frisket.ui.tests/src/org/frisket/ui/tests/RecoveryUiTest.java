package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.Platform;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.elements.AddElement;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Matrix;
import org.frisket.model.Outline;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.files.Recovery;
import org.junit.jupiter.api.Test;
import org.osgi.framework.FrameworkUtil;

/** Unsaved work survives an end that nobody asked for. */
class RecoveryUiTest extends OpenBench {

	private static Path copies() {
		return Platform.getStateLocation(FrameworkUtil.getBundle(BenchEditor.class)).toPath().resolve("unsaved");
	}

	private void edit() {
		edits().execute(new MoveElements(List.of(element(sample.plate)), 0, 12.5));
	}

	private void editAndWait() {
		edit();
		Screen.waitUntil("a copy is kept", () -> Recovery.all().size() == 1);
	}

	/** What a killed program leaves: the copies stay, the editors are gone. */
	private void crash() throws IOException {
		Map<Path, byte[]> left = new LinkedHashMap<>();
		try (Stream<Path> files = Files.list(copies())) {
			for (Path each : files.toList()) {
				left.put(each, Files.readAllBytes(each));
			}
		}
		page().closeAllEditors(false);
		assertEquals(List.of(), Recovery.all());
		for (Map.Entry<Path, byte[]> each : left.entrySet()) {
			Files.write(each.getKey(), each.getValue());
		}
	}

	private static BenchEditor reopened() throws Exception {
		Bench.reopenUnsaved(page());
		IEditorPart editor = page().getActiveEditor();
		Screen.waitUntil("it is worked through", ((BenchEditor) editor)::isUpToDate);
		listen((BenchEditor) editor);
		return (BenchEditor) editor;
	}

	@Test
	void afterACrashTheJobIsBackUnsavedAndUnderItsOwnName() throws Exception {
		String saved = Files.readString(file);
		editAndWait();
		String edited = text(bench.document().job());
		crash();
		bench = reopened();
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "recovered");
		assertEquals(new JobInput(file), bench.getEditorInput());
		assertEquals("sample.frjob", bench.getPartName());
		assertTrue(bench.isDirty());
		assertEquals(edited, text(bench.document().job()));
		assertTrue(bench.notice().contains("not saved"), bench.notice());
		assertEquals(saved, Files.readString(file));
		// the copy is still there, should it happen again
		assertEquals(1, Recovery.all().size());
		Screen.key("ctrl+s");
		Screen.waitUntil("it is saved", () -> !bench.isDirty());
		assertEquals(edited, Files.readString(file));
		assertEquals(List.of(), Recovery.all());
		assertEquals("", bench.notice());
	}

	@Test
	void whatCameBackCanBeGivenUp() throws Exception {
		editAndWait();
		crash();
		bench = reopened();
		Dialogs.press(Dialogs.button(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), "Discard Them"));
		Screen.waitUntil("the file is read", () -> !bench.isDirty());
		assertEquals(Matrix.IDENTITY, element(sample.plate).getTransform());
		Screen.waitUntil("the copy is gone", () -> Recovery.all().isEmpty());
		// discarded by a slip of the finger
		bench.commandStack().undo();
		assertEquals(Matrix.translation(0, 12.5), element(sample.plate).getTransform());
		assertTrue(bench.isDirty());
	}

	@Test
	void openingTheFileByHandBringsTheUnsavedWorkToo() throws Exception {
		editAndWait();
		crash();
		bench = open(file);
		assertTrue(bench.isDirty());
		assertEquals(Matrix.translation(0, 12.5), element(sample.plate).getTransform());
	}

	@Test
	void untitledJobComesBackToo() throws Exception {
		Screen.key("ctrl+n");
		Screen.waitUntil("a new job is in front", () -> page().getActiveEditor() != bench);
		bench = (BenchEditor) page().getActiveEditor();
		Outline outline = FrisketFactory.INSTANCE.createOutline();
		outline.setPathData("M 0 0 L 0 9 L 9 9 Z");
		edits().execute(new AddElement(bench.document().job().getLayers().get(0), outline));
		Screen.waitUntil("a copy is kept", () -> Recovery.all().size() == 1);
		String edited = text(bench.document().job());
		crash();
		bench = reopened();
		assertEquals("Untitled", bench.getPartName());
		assertTrue(bench.isDirty());
		assertEquals(edited, text(bench.document().job()));
	}

	@Test
	void saveUndoAndCloseDropTheCopy() throws Exception {
		editAndWait();
		Screen.waitUntil("the line says so", () -> StatusText.shown().contains("Autosaved "));
		bench.doSave(new NullProgressMonitor());
		assertEquals(List.of(), Recovery.all());
		editAndWait();
		bench.commandStack().undo();
		assertFalse(bench.isDirty());
		assertEquals(List.of(), Recovery.all());
		editAndWait();
		page().closeEditor(bench, false);
		assertEquals(List.of(), Recovery.all());
	}
}
