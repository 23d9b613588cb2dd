package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.model.JobFile;
import org.frisket.orders.Entry;
import org.frisket.orders.intake.OrderField;
import org.frisket.orders.intake.RememberedMappings;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.exchange.Arrivals;
import org.frisket.ui.orders.internal.exchange.IntakeDialog;
import org.junit.jupiter.api.Test;

/** Orders come as a table and jobs go out as files, by keys alone. */
class ExchangeUiTest extends OpenBook {

	private static final String TABLE = "Orders from a Table";

	private static String said(Shell shell) {
		return String.join("\n", Dialogs.all(shell).map(Dialogs::text).toList());
	}

	/** As files that are dropped on the book: the window system's own dialog loses keys on a busy machine. */
	private void take(Path file) {
		Arrivals.takeIn(book.getSite().getWorkbenchWindow(), List.of(file));
	}

	/** The key asks for files; nobody names one. */
	private static void askAndLeave() throws Exception {
		Process leaves = new ProcessBuilder("sh", "-c", """
				id=$(xdotool search --sync --onlyvisible --name "^Import Orders$" | head -1)
				xdotool windowactivate --sync "$id" key Escape
				""").inheritIO().start();
		Screen.events("key", "ctrl+b", "i");
		Screen.waitUntil("it was asked for files", () -> !leaves.isAlive());
		assertEquals(0, leaves.exitValue());
	}

	private Optional<Entry> titled(String title) throws Exception {
		return elsewhere().list(100).stream().filter(job -> job.title().equals(title)).findFirst();
	}

	@Test
	void tableIsShownMendedByItsColumnsTakenInAndRemembered() throws Exception {
		int before = elsewhere().list(100).size();
		Path file = home.resolve("shop.csv");
		Files.writeString(file, "What;Who;When;Number of\nPaper lanterns;Tern Bookshop;3/4/2027;12\nQuay signs;;13/4/2027;2\n");
		focus();
		askAndLeave();
		take(file);
		Shell shell = dialog(TABLE);
		Button take = Dialogs.button(shell, "Take In");
		IntakeDialog dialog = (IntakeDialog) shell.getData();
		Screen.waitUntil("it is said that no column holds the titles", () -> !dialog.problems().isEmpty());
		assertTrue(dialog.problems().get(0).startsWith("1||None of the columns"), dialog.problems().toString());
		assertFalse(take.isEnabled());
		choose(shell, "Title", "What");
		choose(shell, "Customer", "Who");
		choose(shell, "Due", "When");
		Screen.waitUntil("days that can be mistaken are told by row and column", () -> dialog.problems().size() == 2
				&& dialog.problems().get(1).startsWith("3|When|"));
		Screen.keep(Screen.picture(shell), "intake-problems");
		assertFalse(take.isEnabled());
		assertEquals(before, elsewhere().list(100).size());
		choose(shell, "Quantity", "Number of");
		choose(shell, "Days are written", "Day, month, year");
		Screen.waitUntil("all can be read", () -> take.isEnabled() && dialog.problems().isEmpty());
		Screen.keep(Screen.picture(shell), "intake-ready");
		field(shell, "").setFocus();
		Screen.type("shop");
		Screen.waitUntil("it has a name", () -> take.isEnabled() && field(shell, "shop") != null);
		Screen.key("Return");
		Screen.waitUntil("it is told what was taken in", () -> said(shell).contains("Taken in: 2 orders"));
		Screen.keep(Screen.picture(shell), "intake-taken");
		Screen.key("Return");
		Screen.waitUntil("the window is closed", shell::isDisposed);
		Entry lanterns = titled("Paper lanterns").orElseThrow();
		assertEquals(12, lanterns.quantity());
		assertEquals("2027-04-03", lanterns.due().orElseThrow().toString());
		assertEquals("What", new RememberedMappings(Studio.folder()).recall("shop").orElseThrow().headers()
				.get(OrderField.TITLE));
		Screen.waitUntil("the book shows them", () -> numbers().contains(lanterns.number()));
	}

	private static Text field(Shell shell, String text) {
		return (Text) Dialogs.all(shell).filter(Text.class::isInstance)
				.filter(each -> each.isEnabled() && ((Text) each).getEditable())
				.filter(each -> ((Text) each).getText().equals(text)).findFirst().orElse(null);
	}

	/** As a choice in the list does; the keys that open it are those of the window system. */
	private static void choose(Shell shell, String name, String entry) {
		Combo combo = (Combo) Dialogs.all(shell).filter(control -> name.equals(control.getData())).findFirst().orElseThrow();
		int index = combo.indexOf(entry);
		assertTrue(index >= 0, List.of(combo.getItems()).toString());
		Screen.waitUntil(name + " listens", () -> combo.isFocusControl() || combo.setFocus());
		combo.select(index);
		combo.notifyListeners(SWT.Selection, new Event());
		StudioOfOrders.quiet();
		assertEquals(entry, combo.getText());
	}

	@Test
	void selectedJobLeavesAsTicketAndAsFileAndComesBack() throws Exception {
		long number = numbers().get(0);
		grid().select(number);
		focus();
		Screen.waitUntil("it is selected", () -> selected().equals(List.of(number)));
		Path ticket = home.resolve("out.xjdf");
		Dialogs.typeIntoNext("Write Job Ticket", ticket.toString());
		Screen.events("key", "ctrl+b", "j");
		Screen.waitUntil("the ticket is written", () -> Files.isRegularFile(ticket));
		assertTrue(Files.readString(ticket).contains("JobID=\"" + number + "\""));
		focus();
		Path file = home.resolve("out" + JobFile.ENDING);
		Dialogs.typeIntoNext("Write Job File", file.toString());
		Screen.events("key", "ctrl+b", "e");
		Screen.waitUntil("the job is written", () -> Files.isRegularFile(file));
		var job = JobFile.load(file);
		assertEquals(elsewhere().find(number).title(), job.getTitle());
		job.setId("from-elsewhere");
		job.setNumber("1");
		job.setTitle("Came back");
		JobFile.save(job, file);
		int before = elsewhere().list(100).size();
		focus();
		take(file);
		Screen.waitUntil("it is in the book", () -> numbers().size() == before + 1);
		assertTrue(titled("Came back").isPresent());
	}
}
