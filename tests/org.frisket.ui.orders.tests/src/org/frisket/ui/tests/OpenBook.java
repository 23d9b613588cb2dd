package org.frisket.ui.tests;

import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.desk.BookQuery;
import org.frisket.orders.desk.SampleStudio;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.StudioChoice;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.book.BookGrid;
import org.frisket.ui.orders.internal.book.BookView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/** The order book of a studio that is there for one test only. */
abstract class OpenBook extends OpenBench {

	protected Path home;
	protected BookView book;

	@BeforeEach
	void openBook() throws Exception {
		home = Files.createTempDirectory("home");
		Studio.choose(Optional.of(home.resolve("studio")));
		if (isFilled()) {
			SampleStudio.fill(elsewhere(), LocalDate.now(), "other desk");
		}
		book = (BookView) page().showView(Orders.BOOK_ID);
		page().activate(book);
		// a view remembers how it was looked at
		book.show(BookQuery.ALL);
		OrderDesk.get().refresh();
		// the desk may still show the jobs of the studio before, which have the same numbers
		List<String> ids = elsewhere().list(100).stream().map(Entry::id).toList();
		Screen.waitUntil("the book is read", () -> ids.isEmpty() ? book.isEmptyPageShown() : ids().equals(ids));
		bookInFront();
	}

	/** The book alone on the page, so that all of it can be seen. */
	protected void bookInFront() {
		page().activate(book);
		// an editor that was opened since came back beside it, and the state says nothing of that
		page().setPartState(page().getReference(book), IWorkbenchPage.STATE_RESTORED);
		page().setPartState(page().getReference(book), IWorkbenchPage.STATE_MAXIMIZED);
		focus();
	}

	@AfterEach
	void backToTheUsualStudio() throws Exception {
		Arrays.stream(Display.getCurrent().getShells()).filter(each -> each.getData() instanceof Dialog)
				.filter(each -> each.getParent() != null && !each.isDisposed()).forEach(Shell::close);
		page().setPartState(page().getReference(book), IWorkbenchPage.STATE_RESTORED);
		page().hideView(book);
		StudioChoice.apply();
		Screen.settle();
		try (Stream<Path> all = Files.walk(home)) {
			for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
				Files.deleteIfExists(each);
			}
		} catch (DirectoryNotEmptyException closing) {
			// what the store leaves when it is closed
		}
	}

	/** Whether the sample studio is in it before the workbench looks. */
	protected boolean isFilled() {
		return true;
	}

	/** The order book of another desk. */
	protected static OrderBook elsewhere() {
		return new OrderBook(Studio.folder());
	}

	protected BookGrid grid() {
		return book.grid();
	}

	protected void focus() {
		bringToFront(book.getSite().getShell());
		page().activate(book);
		Screen.waitUntil("the book listens", () -> grid().table().isFocusControl() || grid().table().setFocus()
				|| book.isEmptyPageShown());
		Screen.settle();
	}

	private List<String> ids() {
		return IntStream.range(0, grid().lines().size()).boxed().flatMap(row -> grid().lines().job(row).stream())
				.map(Entry::id).toList();
	}

	/** The numbers of the jobs that are seen, with 0 for headings. */
	protected List<Long> numbers() {
		return IntStream.range(0, grid().lines().size()).mapToObj(row -> grid().lines().line(row).number()).toList();
	}

	protected void waitFor(Long... numbers) {
		Screen.waitUntil(List.of(numbers) + " are seen", () -> numbers().equals(List.of(numbers)));
		Screen.settle();
	}

	protected List<Long> selected() {
		return grid().selection().stream().map(Entry::number).toList();
	}

	/** Where a line is seen. */
	protected Rectangle place(long number) {
		Screen.waitUntil(number + " is in view", () -> grid().boundsOf(numbers().indexOf(number)).isPresent());
		return grid().boundsOf(numbers().indexOf(number)).orElseThrow();
	}

	protected void click(long number) {
		Rectangle place = place(number);
		Screen.click(grid().table(), 300, place.y + place.height / 2);
	}

	protected Text words() {
		return (Text) book.fields().get(0);
	}

	protected static void press(Control in, String button) {
		Control found = Dialogs.button(in, button);
		Screen.click(found, found.getSize().x / 2, found.getSize().y / 2);
	}

	protected static Shell dialog(String title) {
		Screen.waitUntil(title + " is open", () -> Dialogs.isOpen(title));
		Shell shell = Dialogs.shell(title);
		bringToFront(shell);
		return shell;
	}
}
