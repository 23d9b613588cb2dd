package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.advice.Confidence;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.material.shelf.StockChange;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.trials.CellPlace;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.TestSheet;
import org.frisket.material.trials.Verdict;
import org.frisket.material.weights.Thickness;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.material.internal.StudioShelf;
import org.frisket.ui.material.internal.machines.StudioDesk;
import org.frisket.ui.material.internal.trials.TestSheetEditor;
import org.frisket.ui.material.internal.trials.TestSheetInput;
import org.frisket.ui.material.internal.trials.VerdictSign;
import org.junit.jupiter.api.Test;

/** A test sheet is planned, opened as a job, judged by keys and kept. */
class TestSheetUiTest extends OpenRoom {

	private TestSheetEditor editor;

	private TestSheetEditor open() throws Exception {
		editor = (TestSheetEditor) page().openEditor(TestSheetInput.NEW, TestSheetEditor.ID);
		Screen.waitUntil("the page has settled", editor::isQuiet);
		return editor;
	}

	private Control all() {
		return editor.page().canvas().getParent().getParent().getParent().getParent();
	}

	/** Opens the plan as a job, and comes back to the page to judge it. */
	private void cut() {
		click(Dialogs.button(all(), "Open as Job"));
		Screen.waitUntil("the job lies on the bench", () -> front().isPresent());
		page().activate(editor);
		Screen.waitUntil("the sheet is one of the studio's", () -> editor.isQuiet() && !id().isEmpty());
		Control canvas = editor.page().canvas();
		Screen.waitUntil("the picture listens", () -> canvas.isFocusControl() || canvas.setFocus());
		Screen.settle();
	}

	private String id() {
		return ((TestSheetInput) editor.getEditorInput()).id();
	}

	private static Optional<JobOnBench> front() {
		IEditorPart active = page().getActiveEditor();
		return Optional.ofNullable(Adapters.adapt(active, JobOnBench.class));
	}

	private Optional<Verdict> verdict(String cell) {
		return editor.sheet().verdict(editor.sheet().place(cell));
	}

	@Test
	void sheetIsOpenedByItsKeyAndItsJobHasACellForEachTrial() throws Exception {
		shelve();
		Screen.key("ctrl+shift+t");
		Screen.waitUntil("the page is open", () -> page().getActiveEditor() instanceof TestSheetEditor);
		editor = (TestSheetEditor) page().getActiveEditor();
		Screen.waitUntil("the page has settled", editor::isQuiet);
		assertEquals("Harbour white", ((org.eclipse.swt.widgets.Combo) field(all(), "stock")).getText());
		assertEquals("20", ((Text) field(all(), "across-from")).getText(), "about the rule of thumb");
		Screen.keepScreen("test-sheet-plan");
		click(Dialogs.button(all(), "Open as Job"));
		Screen.waitUntil("the job lies on the bench", () -> front().isPresent());
		JobOnBench job = front().orElseThrow();
		assertEquals("harbour-white", job.job().getLayers().get(0).getStock());
		assertEquals(1 + editor.sheet().places().size(), job.job().getLayers().get(0).getElements().size());
		Screen.waitUntil("it is kept", StudioDesk.get()::isQuiet);
		TestSheet kept = stored().sheets().get(0);
		assertEquals("sheet-1", kept.id());
		assertTrue(kept.verdicts().isEmpty());
	}

	@Test
	void badInputIsSaidBesideTheFieldAndNothingCanBeOpened() throws Exception {
		open();
		TestSheet before = editor.sheet();
		type(all(), "across-step", "0");
		assertTrue(Dialogs.all(all()).anyMatch(control -> Dialogs.text(control).equals("a step is above zero")));
		assertFalse(Dialogs.button(all(), "Open as Job").isEnabled());
		assertEquals(before, editor.sheet(), "the last good picture stays");
		type(all(), "across-step", "10");
		assertTrue(Dialogs.button(all(), "Open as Job").isEnabled());
		type(all(), "size", "wide");
		assertTrue(Dialogs.all(all()).anyMatch(control -> Dialogs.text(control).equals("“wide” is not a number in mm")));
		Screen.keepScreen("test-sheet-wrong");
		type(all(), "size", "8");
		type(all(), "across-to", "30");
		assertEquals(2, editor.sheet().across().values().size());
	}

	@Test
	void cellsAreJudgedByKeysTakenBackAndSavedAndAdviceFollows() throws Exception {
		shelve();
		open();
		assertEquals(1, editor.page().advice().said().split("rule of thumb", -1).length - 1, editor.page().advice().said());
		cut();
		assertFalse(editor.isDirty());
		Screen.events("key", "2", "Right", "1", "Right", "1", "Down", "4", "Left", "5", "Left", "3");
		assertEquals(Optional.of(Verdict.NOT_THROUGH), verdict("A1"));
		assertEquals(Optional.of(Verdict.THROUGH), verdict("B1"));
		assertEquals(Optional.of(Verdict.THROUGH), verdict("C1"));
		assertEquals(Optional.of(Verdict.CARRIER_CUT), verdict("C2"));
		assertEquals(Optional.of(Verdict.CORNERS_LIFTED), verdict("B2"));
		assertEquals(Optional.of(Verdict.TORN), verdict("A2"));
		assertTrue(editor.isDirty());
		Screen.key("ctrl+z");
		assertEquals(Optional.empty(), verdict("A2"));
		Screen.key("ctrl+shift+z");
		assertEquals(Optional.of(Verdict.TORN), verdict("A2"));
		Screen.key("Delete");
		assertEquals(Optional.empty(), verdict("A2"));
		Screen.key("ctrl+z");
		assertEquals(Optional.of(Verdict.TORN), verdict("A2"));
		Screen.waitUntil("advice is worked out", editor::isQuiet);
		String said = editor.page().advice().said();
		assertTrue(said.contains("Went well side by side: B1, C1"), said);
		assertTrue(said.contains("trials of this family"), said);
		assertTrue(said.contains("follow the manual"), said);
		assertTrue(editor.page().chart().chart().marks().size() >= 5, editor.page().chart().chart().toString());
		Screen.keepScreen("test-sheet-judged");
		assertTrue(stored().trials().isEmpty(), "nothing is kept before it is saved");
		Screen.key("ctrl+s");
		Screen.waitUntil("it is saved", () -> !editor.isDirty());
		DeskState kept = stored();
		assertEquals(6, kept.trials().size());
		assertEquals("harbour-white", kept.trials().get(0).stock().stock());
		assertNotEquals(Confidence.RULE_OF_THUMB, kept.advisor(kept.trials()).advise(new org.frisket.material.advice.Work(
				kept.trials().get(0).stock(), kept.machine("plain").orElseThrow(), kept.tool("blade").orElseThrow(),
				org.frisket.model.OperationKind.CUT)).confidence());
	}

	@Test
	void earlierSheetsAndWhatWorkedBeforeAreShown() throws Exception {
		shelve();
		open();
		TestSheet planned = editor.sheet();
		TestSheet earlier = new TestSheet("sheet-7", planned.day(), planned.stock(), planned.setup(), planned.base(),
				planned.across(), planned.down(), 0, new java.util.TreeMap<>());
		SettingsDesk.change(Studio.folder(), settings -> {
			settings.save(earlier);
			settings.add(new Run("run-1", java.time.Instant.parse("2031-05-17T10:00:00Z"), "ferry", planned.stock(),
					planned.setup(), planned.base(), Verdict.THROUGH, 2, ""));
			return null;
		});
		StudioDesk.get().refresh();
		Screen.waitUntil("it is known", editor::isQuiet);
		String said = editor.page().advice().said();
		assertTrue(said.contains("This worked for another job with the same stock on 2031-05-17."), said);
		org.eclipse.swt.widgets.List list = Dialogs.all(all()).filter(org.eclipse.swt.widgets.List.class::isInstance)
				.map(org.eclipse.swt.widgets.List.class::cast).findFirst().orElseThrow();
		assertTrue(list.getItem(0).contains("sheet-7"), list.getItem(0));
		list.select(0);
		list.notifyListeners(org.eclipse.swt.SWT.DefaultSelection, new org.eclipse.swt.widgets.Event());
		editor = (TestSheetEditor) page().getActiveEditor();
		Screen.waitUntil("it is open", editor::isQuiet);
		assertEquals("sheet-7", editor.sheet().id());
		assertFalse(field(all(), "stock").isEnabled(), "a sheet is a fact");
	}

	/** Nobody asks for anything to be read again: one watch sees what changes, here and elsewhere. */
	@Test
	void whatIsPutOnTheShelfIsOfferedAndWhatAnotherDeskKeepsIsSeen() throws Exception {
		open();
		org.eclipse.swt.widgets.Combo stocks = (org.eclipse.swt.widgets.Combo) field(all(), "stock");
		Stock film = Stock.named("Harbour film").family(StockFamily.FILM)
				.caliper(new Thickness(new BigDecimal("0.08"))).build();
		StudioShelf.get().change("Harbour film", there -> StockChange.put(List.of(film), List.of()), refused -> refused
				.ifPresent(reason -> {
					throw new AssertionError(reason);
				}));
		Screen.waitUntil("the new stock is offered", () -> stocks.indexOf("Harbour film") >= 0);
		SettingsDesk.change(Studio.folder(), settings -> {
			settings.save(MachineOptions.machine("ferry", Map.of("name", "Ferry cutter")));
			return null;
		});
		org.eclipse.swt.widgets.Combo machines = (org.eclipse.swt.widgets.Combo) field(all(), "machine");
		Screen.waitUntil("the machine of another desk is offered", () -> machines.indexOf("Ferry cutter") >= 0);
	}

	@Test
	void everyVerdictHasASignOfItsOwnFormAndHue() throws Exception {
		open();
		cut();
		Set<Long> forms = new HashSet<>();
		Rectangle second = editor.page().canvas().bounds(new CellPlace(1, 0));
		Screen.click(editor.page().canvas(), second.x + second.width / 2, second.y + second.height / 2);
		Screen.events("key", "2", "Left", "1", "Right", "Right", "3", "Right", "4", "Right", "5", "Down");
		for (Verdict verdict : Verdict.values()) {
			assertEquals(Optional.of(verdict), editor.sheet().verdict(new CellPlace(verdict.ordinal(), 0)));
		}
		ImageData picture = Screen.picture(editor.page().canvas());
		int column = 0;
		for (Verdict verdict : Verdict.values()) {
			Rectangle cell = editor.page().canvas().bounds(new CellPlace(column++, 0));
			RGB hue = VerdictSign.colour(verdict).getRGB();
			long form = 0;
			int pixels = 0;
			// the nine parts of the upper middle of the cell, where the sign is
			int side = Math.min(cell.width, cell.height) / 2;
			for (int y = 0; y < side; y++) {
				for (int x = 0; x < side; x++) {
					RGB seen = Screen.pixel(picture, cell.x + cell.width / 2 - side / 2 + x, cell.y + cell.height / 4 + y);
					if (near(hue, seen)) {
						pixels++;
						form |= 1L << x * 7 / side + 7 * (y * 7 / side);
					}
				}
			}
			assertTrue(pixels > 8, verdict + ": " + pixels);
			assertTrue(forms.add(form), verdict + " looks like another");
		}
	}

	private static boolean near(RGB a, RGB b) {
		return Math.abs(a.red - b.red) + Math.abs(a.green - b.green) + Math.abs(a.blue - b.blue) < 40;
	}

	@Test
	void whatCannotBeReadIsSaidAndNothingCanBeKept() throws Exception {
		open();
		Files.createDirectories(Studio.folder().database());
		StudioDesk.get().refresh();
		Screen.waitUntil("it is noticed", () -> editor.isQuiet() && !StudioDesk.get().canKeep());
		assertTrue(Dialogs.all(all().getParent()).anyMatch(control -> Dialogs.text(control)
				.contains(Studio.folder().database().toString())));
		assertFalse(Dialogs.button(all(), "Open as Job").isEnabled());
		Screen.keepScreen("test-sheet-locked");
		Files.delete(Studio.folder().database());
		click(Dialogs.button(all().getParent(), "Try again"));
		Screen.waitUntil("it can be kept again", () -> editor.isQuiet() && StudioDesk.get().canKeep());
		assertTrue(Dialogs.button(all(), "Open as Job").isEnabled());
	}
}
