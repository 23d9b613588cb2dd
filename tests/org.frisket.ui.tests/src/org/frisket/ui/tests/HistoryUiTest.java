package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.PlatformUI;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.layers.RenameLayer;
import org.frisket.model.Jobs;
import org.frisket.ui.bench.internal.history.JobHistory;
import org.junit.jupiter.api.Test;

/** All steps by name, and the way to any of them. */
class HistoryUiTest extends OpenBench {

	private void threeSteps() {
		edits().execute(new MoveElements(List.of(element(sample.plate)), 0, 5));
		edits().execute(new RenameLayer(Jobs.layerOf(element(sample.disc)), "Sun"));
		edits().execute(new MoveElements(List.of(element(sample.plate), element(sample.disc)), 7, 0));
	}

	private static Table popup() {
		return Arrays.stream(Display.getCurrent().getShells())
				.filter(shell -> shell.isVisible() && shell.getParent() != null
						&& shell != PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell())
				.flatMap(Dialogs::all).filter(Table.class::isInstance).map(Table.class::cast).findFirst().orElse(null);
	}

	private static Table openPopup() {
		Screen.key("ctrl+shift+h");
		Screen.waitUntil("the steps are listed", () -> popup() != null && popup().isFocusControl());
		return popup();
	}

	private static List<String> rows(Table table) {
		return Stream.of(table.getItems()).map(TableItem::getText).toList();
	}

	@Test
	void everyStepIsListedByItsNameAndThePresentOneIsMarked() throws Exception {
		threeSteps();
		bench.commandStack().undo();
		Table table = openPopup();
		assertEquals(List.of("\u2002 As opened", "\u2002 Move outline", "\u25b8 Rename layer",
				"\u2002 Move 2 elements (undone)"), rows(table));
		assertEquals(2, table.getSelectionIndex());
		Screen.keep(Screen.picture(table.getShell()), "history");
		Screen.key("Escape");
		Screen.waitUntil("it is gone", () -> popup() == null);
		assertEquals(2, new JobHistory(bench.commandStack()).present());
	}

	@Test
	void keysGoToAStepBackwardsAndForwardsAgain() throws Exception {
		String first = text(bench.document().job());
		threeSteps();
		String last = text(bench.document().job());
		openPopup();
		Screen.key("Home");
		Screen.key("Return");
		Screen.waitUntil("all is taken back", () -> !bench.commandStack().canUndo());
		assertEquals(first, text(bench.document().job()));
		assertFalse(bench.isDirty());
		listen(bench);
		openPopup();
		Screen.key("End");
		Screen.key("Return");
		Screen.waitUntil("all is done again", () -> !bench.commandStack().canRedo());
		assertEquals(last, text(bench.document().job()));
	}

	@Test
	void clickGoesToAStep() throws Exception {
		threeSteps();
		Table table = openPopup();
		TableItem row = table.getItem(1);
		Screen.click(table, row.getBounds().x + 30, row.getBounds().y + row.getBounds().height / 2);
		Screen.waitUntil("it is there", () -> new JobHistory(bench.commandStack()).present() == 1);
		assertEquals("Disc", Jobs.layerOf(element(sample.disc)).getName());
		assertTrue(bench.commandStack().canRedo());
	}

	@Test
	void stepsBeyondTheEndsLeadToTheEnds() throws Exception {
		threeSteps();
		JobHistory history = new JobHistory(bench.commandStack());
		history.goTo(-5);
		assertEquals(0, history.present());
		history.goTo(99);
		assertEquals(3, history.present());
		history.goTo(2);
		history.goTo(2);
		assertEquals(2, history.present());
	}

	@Test
	void menuNamesTheSteps() {
		threeSteps();
		bench.commandStack().undo();
		Menu bar = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell().getMenuBar();
		Menu edit = Stream.of(bar.getItems()).filter(item -> item.getText().contains("Edit")).findFirst().orElseThrow()
				.getMenu();
		edit.notifyListeners(SWT.Show, new Event());
		Screen.settle();
		List<String> labels = Stream.of(edit.getItems()).map(MenuItem::getText).toList();
		edit.notifyListeners(SWT.Hide, new Event());
		assertTrue(labels.stream().anyMatch(label -> label.contains("Undo Rename layer")), labels.toString());
		assertTrue(labels.stream().anyMatch(label -> label.contains("Redo Move 2 elements")), labels.toString());
		assertTrue(labels.stream().anyMatch(label -> label.contains("History")), labels.toString());
	}
}
