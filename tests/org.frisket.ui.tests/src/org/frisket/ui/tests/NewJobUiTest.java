package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.frisket.editing.EditExecutor;
import org.frisket.editing.elements.AddElement;
import org.frisket.model.FrisketFactory;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Outline;
import org.frisket.model.PreviewColours;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.files.BenchPreferences;
import org.junit.jupiter.api.Test;

/** Jobs that have no file yet. */
class NewJobUiTest extends OpenBench {

	private static BenchEditor pressNew() {
		BenchEditor before = (BenchEditor) page().getActiveEditor();
		listen(before);
		Screen.key("ctrl+n");
		Screen.waitUntil("a new job is in front", () -> page().getActiveEditor() != before);
		BenchEditor editor = (BenchEditor) page().getActiveEditor();
		Screen.waitUntil("it is worked through", editor::isUpToDate);
		listen(editor);
		return editor;
	}

	private static void addOutline(BenchEditor editor) {
		Outline outline = FrisketFactory.INSTANCE.createOutline();
		outline.setPathData("M 10 10 L 10 30 L 30 30 L 30 10 Z");
		Adapters.adapt(editor, EditExecutor.class)
				.execute(new AddElement(editor.document().job().getLayers().get(0), outline));
	}

	@Test
	void keyLaysAnEmptyJobOnTheBenchAndAsksNothing() {
		BenchEditor editor = pressNew();
		assertEquals("Untitled", editor.getTitle());
		assertEquals(Optional.empty(), editor.document().path());
		assertEquals(List.of(), Jobs.elements(editor.document().job()));
		assertFalse(editor.isDirty());
	}

	@Test
	void newJobsBeginAsThePreferencesSay() {
		IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(BenchPreferences.NODE);
		preferences.put(BenchPreferences.STOCK_NAME, " Sand card ");
		preferences.put(BenchPreferences.STOCK_COLOUR, "10,200,255");
		try {
			Layer first = pressNew().document().job().getLayers().get(0);
			assertEquals("Sand card", first.getName());
			assertEquals("#0ac8ff", first.getColour());
			preferences.put(BenchPreferences.STOCK_COLOUR, "no colour");
			preferences.put(BenchPreferences.STOCK_NAME, "  ");
			Layer usual = pressNew().document().job().getLayers().get(0);
			assertEquals("Wording", usual.getName());
			assertEquals(PreviewColours.WORDING, usual.getColour());
		} finally {
			preferences.remove(BenchPreferences.STOCK_NAME);
			preferences.remove(BenchPreferences.STOCK_COLOUR);
		}
	}

	@Test
	void severalLieSideBySideUnderNamesOfTheirOwn() {
		BenchEditor first = pressNew();
		BenchEditor second = pressNew();
		assertEquals("Untitled", first.getTitle());
		assertEquals("Untitled 2", second.getTitle());
		addOutline(second);
		assertFalse(first.isDirty());
		assertTrue(second.isDirty());
		page().closeEditor(first, false);
		assertEquals("Untitled", pressNew().getTitle());
	}

	@Test
	void saveKeyAsksForAPlaceAndTheJobHasItsFileThen() throws Exception {
		BenchEditor editor = pressNew();
		addOutline(editor);
		Path place = folder.resolve("gift tag.frjob");
		Dialogs.typeIntoNext("Save Job", place.toString());
		Screen.key("ctrl+s");
		Screen.waitUntil("it is saved", () -> !editor.isDirty());
		assertEquals(new JobInput(place), editor.getEditorInput());
		assertEquals("gift tag.frjob", editor.getTitle());
		assertEquals(1, Jobs.elements(JobFile.load(place)).size());
		assertTrue(editor.document().path().isPresent());
	}

	@Test
	void closingAsksBeforeAnythingIsGivenUp() throws Exception {
		BenchEditor editor = pressNew();
		addOutline(editor);
		assertNotNull(Dialogs.answer("Cancel", () -> Screen.key("ctrl+w")));
		assertTrue(page().isPartVisible(editor));
		assertTrue(editor.isDirty());
		Path place = folder.resolve("kept.frjob");
		Dialogs.typeIntoNext("Save Job", place.toString());
		Dialogs.answer("Save", () -> Screen.key("ctrl+w"));
		Screen.waitUntil("it is saved", () -> Files.exists(place));
		Screen.waitUntil("it is closed", () -> page().findEditor(new JobInput(place)) == null);
		assertEquals(1, Jobs.elements(JobFile.load(place)).size());
	}

	@Test
	void closingAnEmptyOneAsksNothing() {
		BenchEditor editor = pressNew();
		Screen.key("ctrl+w");
		Screen.waitUntil("it is closed", () -> page().getActiveEditor() != editor);
		assertNull(page().findEditor(editor.getEditorInput()));
	}
}
