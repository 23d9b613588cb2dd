package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.Collator;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.orders.desk.BookColumn;
import org.frisket.orders.desk.SavedFilters;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Sql;
import org.frisket.studio.store.Store;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.orders.internal.OrderDesk;
import org.junit.jupiter.api.Test;

/** The order book as a table, worked with keys and the mouse. */
class BookUiTest extends OpenBook {

	@Test
	void jobsAreSeenWithTheirPicturesAndFoundAsOneTypes() throws Exception {
		waitFor(12L, 11L, 10L, 9L, 8L, 7L, 6L, 5L, 4L, 3L, 2L, 1L);
		// how many lines are in view depends on the height of the window
		Screen.waitUntil("pictures are there", () -> IntStream.range(0, 12)
				.allMatch(row -> grid().isPictured(row) || grid().boundsOf(row).isEmpty()));
		Screen.keep(Screen.picture(grid().table()), "order-book");
		Screen.keepScreen("order-book-screen");
		assertEquals("12 jobs, 2 late", book.summary());
		Screen.type("tags");
		waitFor(8L);
		assertEquals("tags", words().getText());
		assertEquals("1 of 12 jobs, 1 late", book.summary());
		Screen.key("Escape");
		Screen.waitUntil("all are seen", () -> numbers().size() == 12);
		focus();
		Screen.key("ctrl+f");
		Screen.waitUntil("the field listens", () -> words().isFocusControl());
		Screen.type("approved card");
		waitFor(7L, 6L);
		Screen.key("Down");
		Screen.waitUntil("the table listens", () -> grid().table().isFocusControl());
		assertEquals(List.of(7L), selected());
	}

	@Test
	void jobsThatCannotBeReadAreNamedAndTheRestWorks() throws Exception {
		assertFalse(book.unreadable().isVisible());
		try (Store store = Store.open(Studio.folder(), OrderBook.AREA)) {
			store.change(connection -> Sql.update(connection, "UPDATE orders_job SET stage = 'GILDED' WHERE number IN (3, 5)"));
		}
		Screen.waitUntil("they are named", () -> book.unreadable().isVisible());
		assertTrue(book.unreadable().getText().startsWith("Jobs <a>5</a>, <a>3</a> are missing here"),
				book.unreadable().getText());
		waitFor(12L, 11L, 10L, 9L, 8L, 7L, 6L, 4L, 2L, 1L);
		Screen.keepScreen("order-book-unreadable");
		assertTrue(book.unreadable().setFocus());
		Screen.key("Return");
		Screen.waitUntil("it is said why", () -> book.notice().contains("GILDED"));
		focus();
		Screen.type("tags");
		waitFor(8L);
		Screen.key("Escape");
		try (Store store = Store.open(Studio.folder(), OrderBook.AREA)) {
			store.change(connection -> Sql.update(connection, "UPDATE orders_job SET stage = 'ORDERED' WHERE number IN (3, 5)"));
		}
		Screen.waitUntil("all are there", () -> numbers().size() == 12 && !book.unreadable().isVisible());
	}

	@Test
	void everythingIsReachedWithoutTheMouse() {
		Screen.key("Tab");
		Screen.waitUntil("the table is left", () -> !grid().table().isFocusControl());
		Screen.key("shift+Tab");
		Screen.waitUntil("and come back to", () -> grid().table().isFocusControl());
		Screen.key("shift+Tab");
		Screen.waitUntil("the groups listen", () -> book.fields().get(2).isFocusControl());
		Screen.key("shift+Tab");
		Screen.waitUntil("the filters listen", () -> book.fields().get(1).isFocusControl());
		Screen.key("shift+Tab");
		Screen.waitUntil("the words listen", () -> words().isFocusControl());
		focus();
		Screen.events("key", "ctrl+b", "o");
		Screen.key("Down");
		Screen.key("Down");
		Screen.key("Return");
		// below the number stands the title
		waitFor(titles().toArray(Long[]::new));
		assertEquals(BookColumn.TITLE, grid().lines().sight().query().column());
	}

	/** By title, as people read them. */
	private static List<Long> titles() {
		return OrderDesk.get().jobs().stream()
				.sorted((a, b) -> Collator.getInstance().compare(a.title(), b.title())).map(Entry::number).toList();
	}

	@Test
	void keysBeginAtWhatIsSeen() {
		assertEquals(List.of(), selected());
		Screen.key("Next");
		assertEquals(List.of(12L), selected());
		Screen.key("Next");
		assertTrue(grid().boundsOf(numbers().indexOf(selected().get(0))).isPresent());
		assertTrue(selected().get(0) < 12, selected().toString());
	}

	@Test
	void keysGoThroughTheRows() {
		Screen.key("Home");
		assertEquals(List.of(12L), selected());
		Screen.key("Down");
		Screen.key("shift+Down");
		assertEquals(List.of(11L, 10L), selected());
		Screen.key("End");
		assertEquals(List.of(1L), selected());
		Screen.key("shift+Home");
		assertEquals(12, selected().size());
		Screen.waitUntil("the workbench is told", () -> page().getSelection() instanceof IStructuredSelection all
				&& all.size() == 12 && all.getFirstElement() instanceof Entry);
		Screen.key("Up");
		assertEquals(1, selected().size());
		Screen.key("ctrl+a");
		assertEquals(12, selected().size());
	}

	@Test
	void enterAndADoubleClickLayJobsOnTheBench() {
		click(5);
		Screen.key("Return");
		waitForBench("Shop-window alphabet");
		bookInFront();
		grid().select(8);
		Rectangle place = place(8);
		Screen.doubleClick(grid().table(), 300, place.y + place.height / 2);
		waitForBench("Gift tags with hole");
	}

	private void waitForBench(String title) {
		Screen.waitUntil(title + " is on the bench", () -> page().getActiveEditor() instanceof BenchEditor bench
				&& bench.document() != null && bench.document().job().getTitle().equals(title));
	}

	@Test
	void theMenuOfAJobHasAllThatIsDoneToIt() throws Exception {
		click(6);
		Screen.settle();
		Menu menu = grid().table().getMenu();
		menu.notifyListeners(SWT.Show, new Event());
		List<String> items = Arrays.stream(menu.getItems()).filter(MenuItem::isEnabled).map(MenuItem::getText)
				.map(text -> text.replaceAll("[&…]|\\t.*", "")).filter(text -> !text.isEmpty()).toList();
		menu.notifyListeners(SWT.Hide, new Event());
		assertEquals(List.of("Open Job", "Change Stage", "Order Again", "Docket as PDF", "Proof as PDF", "Quote as PDF",
				"Write Job Ticket", "Write Job File", "New Order"), items);
	}

	@Test
	void titlesTakeTheRoomThatIsLeft() {
		GridData room = new GridData(SWT.BEGINNING, SWT.FILL, false, true);
		int wide = grid().table().getClientArea().width;
		Screen.waitUntil("no room is left", () -> grid().table().getWidth() == wide);
		Composite pages = grid().table().getParent();
		Object before = pages.getLayoutData();
		room.widthHint = wide - 100;
		pages.setLayoutData(room);
		pages.getParent().layout(true, true);
		Screen.waitUntil("the titles are narrower", () -> grid().table().getWidth() == wide - 100);
		room.widthHint = 400;
		pages.getParent().layout(true, true);
		Screen.waitUntil("the rest is scrolled to", () -> grid().table().getWidth() == 400);
		assertEquals(64 + 68 + 186, grid().startOf(BookColumn.CUSTOMER));
		pages.setLayoutData(before);
		pages.getParent().layout(true, true);
	}

	@Test
	void columnsSortAndGroupsFold() throws Exception {
		// the title of “Due” is clicked twice: the last day first
		int x = grid().startOf(BookColumn.DUE) + 20;
		Screen.click(grid().table(), x, 10);
		waitFor(11L, 8L, 9L, 7L, 6L, 5L, 10L, 4L, 12L, 3L, 2L, 1L);
		Screen.click(grid().table(), x, 10);
		waitFor(1L, 2L, 3L, 12L, 4L, 10L, 5L, 6L, 7L, 9L, 8L, 11L);
		choose(1, "To cut today, by stock");
		Screen.waitUntil("those are seen", () -> numbers().size() == 4);
		assertEquals(List.of(0L, 6L, 7L, 8L), numbers());
		Screen.keepScreen("order-book-to-cut");
		Screen.key("Home");
		Screen.key("Left");
		waitFor(0L);
		Screen.keepScreen("order-book-folded");
		Screen.key("Right");
		Screen.waitUntil("it is open", () -> numbers().size() == 4);
		choose(1, "All jobs");
		Screen.waitUntil("all are seen", () -> numbers().size() == 12);
		choose(2, "Grouped by customer");
		Screen.waitUntil("with headings", () -> numbers().size() == 12 + 7);
		Screen.keepScreen("order-book-grouped");
	}

	private void choose(int field, String item) {
		Combo combo = (Combo) book.fields().get(field);
		combo.select(combo.indexOf(item));
		combo.notifyListeners(SWT.Selection, new Event());
		focus();
	}

	@Test
	void stagesChangeTogetherAndAreTakenBack() throws Exception {
		click(12);
		Screen.holding("ctrl", () -> click(4));
		Screen.holding("ctrl", () -> click(1));
		assertEquals(List.of(12L, 4L, 1L), selected());
		Screen.key("F4");
		Shell dialog = dialog("Change Stage");
		press(dialog, "Ordered");
		Screen.keep(Screen.picture(dialog), "order-book-stage");
		press(dialog, "Change Stage");
		// job 4 goes back without a reason: a rule of the studio is against it
		Shell refused = dialog("Stages Not Changed");
		String list = String.join("\n", Dialogs.all(refused).map(Dialogs::text).toList());
		assertTrue(list.contains("Job 4, Timetable header: it goes back, and nobody says why"), list);
		Screen.keep(Screen.picture(refused), "order-book-refused");
		press(refused, "Close");
		Screen.waitUntil("the others are moved", () -> stage(1) == Stage.ORDERED && stage(12) == Stage.ORDERED);
		assertEquals(Stage.DESIGNED, stage(4));
		focus();
		Screen.key("ctrl+z");
		Screen.waitUntil("it is taken back", () -> stage(1) == Stage.ENQUIRY && stage(12) == Stage.ON_HOLD);
		assertEquals(Stage.ENQUIRY, elsewhere().find(1).stage());
		Screen.key("ctrl+shift+z");
		Screen.waitUntil("it is done again", () -> stage(1) == Stage.ORDERED && stage(12) == Stage.ORDERED);
		elsewhere().stage(1, Stage.DESIGNED, "other desk", "");
		Screen.waitUntil("the other desk's change is seen", () -> stage(1) == Stage.DESIGNED);
		Screen.key("ctrl+z");
		press(dialog("Stages Not Changed"), "Close");
		Screen.waitUntil("what could be is taken back", () -> stage(12) == Stage.ON_HOLD);
		assertEquals(Stage.DESIGNED, elsewhere().find(1).stage());
	}

	private static Stage stage(long number) {
		return OrderDesk.get().find(number).orElseThrow().stage();
	}

	@Test
	void anotherDeskIsSeenWhileTheSelectionStays() throws Exception {
		click(5);
		LocalDate due = LocalDate.now().minusDays(3);
		elsewhere().add(new NewOrder("Quay flags", "Wenzel Brook", Optional.of(due), 7, ""), "other desk");
		Screen.waitUntil("the new job is seen", () -> numbers().get(0) == 13);
		assertEquals(List.of(5L), selected());
		assertEquals("13 jobs, 3 late", book.summary());
	}

	@Test
	void anOrderIsTakenInByKeys() throws Exception {
		Screen.key("Insert");
		Shell dialog = dialog("New Order");
		Screen.key("Return");
		Screen.waitUntil("it is said that a title is missing",
				() -> Dialogs.all(dialog).map(Dialogs::text).anyMatch(text -> text.strip().equals("An order needs a title")));
		type("Quay flags");
		Screen.key("Tab");
		type("Wenzel Brook");
		Screen.key("Tab");
		type("+5");
		Screen.key("Tab");
		Screen.key("ctrl+a");
		type("12");
		Screen.keep(Screen.picture(dialog), "order-book-new");
		press(dialog, "Take In");
		Screen.waitUntil("it is in the book and selected", () -> selected().equals(List.of(13L)));
		Entry added = elsewhere().find(13);
		assertEquals("Quay flags|Wenzel Brook|12|" + LocalDate.now().plusDays(5),
				added.title() + '|' + added.customer() + '|' + added.quantity() + '|' + added.due().orElseThrow());
	}

	/** Types into the field that has the focus, and waits until it is there. */
	private static void type(String text) {
		Screen.type(text);
		Screen.waitUntil(text + " is typed", () -> Display.getCurrent().getFocusControl() instanceof Text field
				&& field.getText().equals(text));
	}

	@Test
	void filtersAreKeptForTheStudio() throws Exception {
		Screen.type("zebra");
		Screen.waitUntil("nothing is found", () -> book.isNothingFoundShown());
		Screen.keepScreen("order-book-nothing");
		Screen.key("ctrl+a");
		Screen.type("tea");
		waitFor(11L, 7L, 2L);
		Screen.events("key", "ctrl+b", "k");
		Shell dialog = dialog("Keep Filter");
		Screen.type("Tea room");
		press(dialog, "OK");
		Combo filters = (Combo) book.fields().get(1);
		Screen.waitUntil("it is offered and chosen", () -> filters.getText().equals("Tea room"));
		assertEquals("tea", new SavedFilters(Studio.folder()).list().get(0).query().text());
		focus();
		Screen.events("key", "ctrl+b", "a");
		Screen.waitUntil("all are seen", () -> numbers().size() == 12);
		choose(1, "Tea room");
		waitFor(11L, 7L, 2L);
		Screen.events("key", "ctrl+b", "x");
		Screen.waitUntil("it is gone", () -> filters.indexOf("Tea room") < 0);
		assertFalse(new SavedFilters(Studio.folder()).list().stream().anyMatch(each -> each.name().equals("Tea room")));
	}
}
