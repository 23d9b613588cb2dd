package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.orders.stages.StageRule;
import org.frisket.orders.stages.StageRules;
import org.frisket.orders.work.backup.StudioBackup;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.OpenJob;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.backup.BackupRun;
import org.frisket.ui.orders.internal.backup.RestoreRun;
import org.frisket.ui.orders.internal.book.BookView;
import org.junit.jupiter.api.Test;

/** A studio is backed up and brought back from the screen, and its rules for stages are set there. */
class BackupUiTest extends StudioOfOrders {

	private Path file;

	@Override
	void fill() throws Exception {
		file = home.resolve("harbour.zip");
		add("Ferry banner");
	}

	private void add(String title) throws Exception {
		new OrderBook(studio).add(new NewOrder(title, "Tern Bookshop", Optional.empty(), 1, ""), "Ottoline");
	}

	private static Shell window() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
	}

	/** Answers the windows that come one after the other, and tells what they said. */
	private static String answering(Runnable work, String... buttons) {
		StringBuilder said = new StringBuilder();
		answer(said, 0, buttons);
		work.run();
		Screen.settle();
		return said.toString();
	}

	private static void answer(StringBuilder said, int next, String... buttons) {
		Display.getCurrent().timerExec(50, () -> {
			for (Shell shell : Display.getCurrent().getShells()) {
				// work that goes on has a button to call it off
				if (shell.isVisible() && shell.getParent() != null && !shell.getText().startsWith("Progress") && Dialogs.all(shell).filter(Button.class::isInstance)
						.anyMatch(each -> Dialogs.text(each).equals(buttons[next]))) {
					said.append(String.join("\n", read(shell))).append('\n');
					OpenBench.bringToFront(shell);
					try {
						Screen.keep(Screen.picture(shell), "backup-" + buttons[next].toLowerCase() + next);
					} catch (Exception e) {
						throw new IllegalStateException(e);
					}
					if (next + 1 < buttons.length) {
						answer(said, next + 1, buttons);
					}
					Button button = Dialogs.button(shell, buttons[next]);
					Screen.click(button, button.getSize().x / 2, button.getSize().y / 2);
					return;
				}
			}
			answer(said, next, buttons);
		});
	}

	private List<String> titles() {
		return OrderDesk.get().jobs().stream().map(each -> each.title()).toList();
	}

	@Test
	void whatIsReplacedIsSaidAndKeptAndAllViewsShowTheBookThatIsBack() throws Exception {
		BookView book = show(Orders.BOOK_ID);
		Screen.waitUntil("the job is listed", () -> titles().equals(List.of("Ferry banner")));
		String written = answering(() -> new BackupRun(window()).write(file), "OK");
		assertTrue(written.contains(file.toString()) && written.contains("Jobs in it: 1"), written);
		add("Place cards");
		Screen.waitUntil("both are listed", () -> titles().size() == 2);
		String asked = answering(() -> new RestoreRun(window()).restore(file), "Cancel");
		assertTrue(asked.contains("Jobs in the backup \u201Charbour.zip\u201D: 1, last changed"), asked);
		assertTrue(asked.contains("Jobs here: 2, last changed"), asked);
		quiet();
		assertEquals(2, new OrderBook(studio).list(10).size());
		String done = answering(() -> new RestoreRun(window()).restore(file), "Restore", "OK");
		Path kept;
		try (Stream<Path> all = Files.list(home)) {
			kept = all.filter(each -> each.toString().contains("before-restore")).findFirst().orElseThrow();
		}
		assertTrue(done.contains("What is here now is kept first, in " + kept), done);
		assertTrue(done.contains("What was here before is kept in " + kept), done);
		Screen.waitUntil("the book that is back is listed", () -> titles().equals(List.of("Ferry banner"))
				&& book.grid().lines().size() == 1);
		assertEquals(2, new StudioBackup(studio).in(kept, null).jobs());
	}

	@Test
	void fileThatIsNoBackupIsRefusedInTheWordsOfTheCommandLine() throws Exception {
		Files.writeString(file, "no zip");
		String told = answering(() -> new RestoreRun(window()).restore(file), "OK");
		assertTrue(told.contains("harbour.zip\u201D cannot be taken in: it is no backup of a studio, or damaged"), told);
		assertEquals(1, new OrderBook(studio).list(10).size());
	}

	private static BenchEditor bench() {
		return (BenchEditor) page().getActiveEditor();
	}

	@Test
	void jobOnABenchThatIsNotInTheBookAnyMoreIsNotLost() throws Exception {
		IPerspectiveDescriptor perspective = page().getPerspective();
		new StudioBackup(studio).write(file, null);
		add("Place cards");
		Screen.waitUntil("both are known", () -> {
			OrderDesk.get().refresh();
			quiet();
			return titles().size() == 2;
		});
		assertTrue(OpenJob.run(PlatformUI.getWorkbench(), 2, told -> {
			throw new AssertionError(told);
		}));
		Screen.waitUntil("the job is on the bench", () -> page().getActiveEditor() instanceof BenchEditor editor
				&& editor.document() != null && editor.isUpToDate());
		try {
			assertFalse(bench().isDirty());
			String asked = answering(() -> new RestoreRun(window()).restore(file), "Restore", "OK");
			assertTrue(asked.contains("Open on benches here: 2 Place cards"), asked);
			Screen.waitUntil("the bench says it", () -> Dialogs.all(window()).map(Dialogs::text)
					.anyMatch(text -> text.contains("this job is not in it")));
			Screen.keepScreen("backup-gone");
			assertTrue(bench().isDirty(), "it is nowhere else");
			assertEquals("Place cards", bench().document().job().getTitle());
		} finally {
			quiet();
			page().closeAllEditors(false);
			page().setPerspective(perspective);
		}
	}

	@Test
	void rulesOfTheCommandLineAreSetInThePreferences() throws Exception {
		StageRules rules = new StageRules(studio);
		rules.set("proof-before-approval", true);
		String id = "org.frisket.ui.orders.rules";
		PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(window(), id, new String[] { id }, null);
		dialog.setBlockOnOpen(false);
		dialog.open();
		OpenBench.bringToFront(dialog.getShell());
		List<Button> boxes = Dialogs.all(dialog.getShell()).filter(Button.class::isInstance).map(Button.class::cast)
				.filter(each -> (each.getStyle() & SWT.CHECK) != 0).toList();
		assertEquals(StageRules.all().size(), boxes.size());
		assertTrue(boxes.stream().allMatch(Button::getSelection));
		Screen.keep(Screen.picture(dialog.getShell()), "preferences-rules");
		Screen.click(boxes.get(1), 10, boxes.get(1).getSize().y / 2);
		Button close = (Button) Dialogs.button(dialog.getShell(), "Apply and Close");
		Screen.click(close, close.getSize().x / 2, close.getSize().y / 2);
		Screen.waitUntil("the page is done", () -> dialog.getShell() == null || dialog.getShell().isDisposed());
		List<Boolean> on = new ArrayList<>();
		for (StageRule rule : StageRules.all()) {
			on.add(rules.isOn(rule));
		}
		assertEquals(List.of(true, false, true), on);
	}
}
