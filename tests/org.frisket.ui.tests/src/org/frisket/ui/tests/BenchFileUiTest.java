package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.junit.jupiter.api.Test;

/** Files that are saved, missing or damaged. */
class BenchFileUiTest extends OpenBench {

	@Test
	void saveKeyWritesTheFile() throws IOException {
		edits().execute(new MoveElements(List.of(element(sample.plate)), 0, 12.5));
		assertTrue(bench.isDirty());
		Screen.key("ctrl+s");
		Screen.waitUntil("the job is saved", () -> !bench.isDirty());
		Job read = JobFile.load(file);
		Element plate = Jobs.element(read, sample.plate.getId()).orElseThrow();
		assertEquals(Matrix.translation(0, 12.5), plate.getTransform());
	}

	@Test
	void saveUnderAnotherNameLeavesTheFirstFileAlone() throws IOException {
		byte[] first = Files.readAllBytes(file);
		edits().execute(new MoveElements(List.of(element(sample.plate)), 3, 0));
		Path other = folder.resolve("other.frjob");
		bench.saveTo(other, new NullProgressMonitor());
		assertFalse(bench.isDirty());
		assertEquals("other.frjob", bench.getTitle());
		assertEquals(new JobInput(other), bench.getEditorInput());
		assertEquals(text(bench.document().job()), Files.readString(other));
		assertEquals(new String(first), Files.readString(file));
	}

	@Test
	void damagedFileIsNamedWithItsPlace() throws Exception {
		String whole = Files.readString(file);
		Path damaged = Files.writeString(folder.resolve("damaged.frjob"), whole.substring(0, whole.length() / 2));
		BenchEditor editor = open(damaged);
		Screen.settle();
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "damaged");
		assertNull(editor.document());
		assertTrue(editor.trouble().contains("damaged.frjob"), editor.trouble());
		assertTrue(editor.trouble().contains("line"), editor.trouble());
		assertFalse(editor.isDirty());
		assertEquals(whole.substring(0, whole.length() / 2), Files.readString(damaged));
	}

	@Test
	void missingFileIsNamed() throws Exception {
		BenchEditor editor = open(folder.resolve("missing.frjob"));
		assertTrue(editor.trouble().contains("missing.frjob"), editor.trouble());
	}
}
