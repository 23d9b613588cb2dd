package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.frisket.model.Jobs;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The list of all commands with their keys. */
class KeyListUiTest extends OpenBench {

	private static final String TITLE = "Key List";

	@AfterEach
	void closeList() {
		if (Dialogs.isOpen(TITLE)) {
			Dialogs.shell(TITLE).close();
		}
	}

	private static Table press() {
		Screen.key("shift+F1");
		Screen.waitUntil("the list is there", () -> Dialogs.isOpen(TITLE));
		Shell shell = Dialogs.shell(TITLE);
		Screen.waitUntil("it listens", () -> shell.getDisplay().getActiveShell() == shell);
		return (Table) Dialogs.all(shell).filter(Table.class::isInstance).findFirst().orElseThrow();
	}

	private static List<String> commands(Table table) {
		return Stream.of(table.getItems()).map(TableItem::getText).toList();
	}

	@Test
	void commandsAreFoundByWordsAndByKeys() throws Exception {
		Table table = press();
		assertTrue(table.getItemCount() > 40, commands(table).toString());
		assertEquals(commands(table).size(), Stream.of(table.getItems())
				.map(row -> row.getText(0) + row.getText(1) + row.getText(2)).distinct().count(), () -> commands(table).toString());
		Screen.keep(Screen.picture(table.getShell()), "key-list");
		Screen.type("mat beh");
		Screen.waitUntil("few are left", () -> table.getItemCount() <= 4);
		assertTrue(commands(table).stream().allMatch("Add Mat Behind"::equals), commands(table).toString());
		assertEquals(Set.of("Ctrl", "Shift", "M"), Set.of(table.getItem(0).getText(1).split("\\+")));
		Screen.key("ctrl+a");
		Screen.type("ctrl+shift+d");
		// on the bench, and on sheets
		Screen.waitUntil("one is left", () -> Set.copyOf(commands(table)).equals(Set.of("Duplicate")));
		Screen.key("ctrl+a");
		Screen.type("no such thing");
		Screen.waitUntil("none is left", () -> table.getItemCount() == 0);
	}

	@Test
	void keysThatMeanSomethingElseHereAreNotListedTwice() {
		Table table = press();
		Screen.type("ctrl+n");
		Screen.waitUntil("few are left", () -> table.getItemCount() < 10);
		List<String> rows = Stream.of(table.getItems()).filter(row -> row.getText(1).equals("Ctrl+N"))
				.map(TableItem::getText).toList();
		assertEquals(List.of("New Job"), rows);
	}

	@Test
	void returnDoesTheCommand() {
		int before = Jobs.elements(bench.document().job()).size();
		Screen.key("ctrl+a");
		Screen.waitUntil("all is selected", () -> selectedIds().size() == before);
		Table table = press();
		Screen.type("shift+ctrl+d");
		Screen.waitUntil("one is left", () -> Set.copyOf(commands(table)).equals(Set.of("Duplicate")));
		Screen.key("Return");
		Screen.waitUntil("it is done", () -> Jobs.elements(bench.document().job()).size() > before);
	}
}
