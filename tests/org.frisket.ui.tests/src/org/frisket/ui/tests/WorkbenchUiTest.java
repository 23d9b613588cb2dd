package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;

import org.eclipse.jface.preference.IPreferenceNode;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.jface.preference.PreferenceManager;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.frisket.ui.LengthText;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.internal.parts.Selection;
import org.junit.jupiter.api.Test;

/** What is around the bench: recent jobs, preferences, commands by name. */
class WorkbenchUiTest extends OpenBench {

	private static final String KEYS_PAGE = "org.eclipse.ui.preferencePages.Keys";
	private static final String BENCH_PAGE = "org.frisket.ui.bench.preferences";

	private static Menu recent() {
		Menu bar = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell().getMenuBar();
		Menu file = shown(item(bar, "File").getMenu());
		return shown(item(file, "Recent Jobs").getMenu());
	}

	private static Menu shown(Menu menu) {
		menu.notifyListeners(SWT.Show, new Event());
		Screen.settle();
		return menu;
	}

	private static MenuItem item(Menu menu, String part) {
		return Stream.of(menu.getItems()).filter(item -> item.getText().replace("&", "").contains(part)).findFirst()
				.orElseThrow(() -> new AssertionError(
						part + " is not in " + Stream.of(menu.getItems()).map(MenuItem::getText).toList()));
	}

	@Test
	void latestJobsAreOfferedAndThoseThatAreGoneAreGrey() throws Exception {
		Path other = sample.save(folder.resolve("other.frjob"));
		open(other);
		Path gone = sample.save(folder.resolve("gone.frjob"));
		open(gone);
		page().closeAllEditors(false);
		Files.delete(gone);
		Menu menu = recent();
		assertTrue(menu.getItem(0).getText().contains("gone.frjob"), menu.getItem(0).getText());
		assertFalse(menu.getItem(0).isEnabled());
		assertTrue(menu.getItem(1).getText().contains("other.frjob"), menu.getItem(1).getText());
		assertTrue(menu.getItem(2).getText().contains("sample.frjob"), menu.getItem(2).getText());
		assertTrue(menu.getItemCount() <= 10);
		menu.getItem(1).notifyListeners(SWT.Selection, new Event());
		Screen.waitUntil("it is open", () -> page().findEditor(new JobInput(other)) != null);
		menu.notifyListeners(SWT.Hide, new Event());
	}

	@Test
	void lengthsAreWrittenInTheUnitOfTheStudio() {
		assertEquals("80.00 × 12.50 mm", LengthText.size(80, 12.5));
		LengthUnit.show(LengthUnit.INCH);
		try {
			assertEquals("1.000 × 0.500 in", LengthText.size(25.4, 12.7));
			assertEquals("0.000 in", LengthText.of(-0.001));
			bench.viewer().setSelection(new StructuredSelection(Selection.all(bench.viewer())));
			Screen.waitUntil("the line says inches", () -> StatusText.shown().contains(" in"));
		} finally {
			LengthUnit.show(LengthUnit.MILLIMETRE);
		}
		Screen.waitUntil("the line says millimetres", () -> StatusText.shown().contains(" mm"));
	}

	@Test
	void preferencesHaveOurPageAndTheKeys() throws IOException {
		PreferenceManager pages = PlatformUI.getWorkbench().getPreferenceManager();
		assertTrue(pages.getElements(PreferenceManager.PRE_ORDER).stream().map(IPreferenceNode::getId)
				.anyMatch(KEYS_PAGE::equals));
		for (String id : new String[] { BENCH_PAGE, BENCH_PAGE + ".newJobs", BENCH_PAGE + ".studio", "org.frisket.app.appearance", KEYS_PAGE }) {
			PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(
					PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), id, new String[] { id }, null);
			dialog.setBlockOnOpen(false);
			dialog.open();
			Screen.settle();
			Screen.keep(Screen.picture(dialog.getShell()), "preferences-" + id.substring(id.lastIndexOf('.') + 1));
			assertTrue(((PreferencePage) dialog.getSelectedPage()).isValid(), id);
			dialog.close();
		}
	}

	@Test
	void aCommandIsFoundByAPieceOfItsName() throws IOException {
		Screen.key("ctrl+j");
		Screen.waitUntil("the list is there", () -> commandList() != null);
		for (String letter : "whole".split("")) {
			Screen.key(letter);
		}
		Screen.waitUntil("the command is offered", () -> rows(commandList()).anyMatch(row -> row.contains("Whole Sheet")));
		Screen.keep(Screen.picture(commandList().getShell()), "commands");
		Screen.key("Escape");
	}

	private static Table commandList() {
		return Arrays.stream(Display.getCurrent().getShells()).filter(Shell::isVisible)
				.filter(shell -> shell != PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell())
				.flatMap(Dialogs::all).filter(Table.class::isInstance).map(Table.class::cast).findFirst().orElse(null);
	}

	private static Stream<String> rows(Table table) {
		return table == null ? Stream.empty()
				: Stream.of(table.getItems()).flatMap(row -> Stream.of(row.getText(0), row.getText(1)));
	}
}
