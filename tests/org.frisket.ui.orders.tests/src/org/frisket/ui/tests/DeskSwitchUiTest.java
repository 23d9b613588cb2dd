package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.orders.Entry;
import org.frisket.orders.desk.SampleStudio;
import org.frisket.ui.bench.PlaceInput;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.book.BookGrid;
import org.frisket.ui.orders.internal.book.BookView;
import org.frisket.ui.orders.internal.week.WeekView;
import org.junit.jupiter.api.Test;

/** A window goes to the order desk and back to the bench by keys, also with a job of the order book. */
class DeskSwitchUiTest extends OpenDocket {

	/** The window on a small screen, and on all of that of tests. */
	private static final Map<String, Point> SIZES = Map.of("small", new Point(1280, 850), "large", new Point(1590, 960));

	private static boolean isShown(String perspective) {
		return page().getPerspective().getId().equals(perspective);
	}

	private static void toTheBench() {
		Screen.key("ctrl+shift+b");
		Screen.waitUntil("it is the bench", () -> isShown(Orders.BENCH_PERSPECTIVE_ID));
		assertTrue(page().isEditorAreaVisible());
	}

	private static void toTheDesk() {
		Screen.key("ctrl+shift+o");
		Screen.waitUntil("it is the order desk", () -> isShown(Orders.DESK_PERSPECTIVE_ID));
		assertFalse(page().isEditorAreaVisible());
	}

	/** Waits until the book lists so many jobs and hears keys. */
	private static BookGrid grid(int jobs) {
		BookView book = (BookView) page().findView(Orders.BOOK_ID);
		page().activate(book);
		BookGrid grid = book.grid();
		Screen.waitUntil(jobs + " jobs are listed", () -> OrderDesk.get().jobs().size() == jobs && grid.lines().size() == jobs);
		Screen.waitUntil("the book listens", () -> grid.table().isFocusControl() || grid.table().setFocus());
		Screen.settle();
		return grid;
	}

	@Test
	void jobOfTheBookIsOpenedOnTheBenchAndLeftForTheDeskByKeys() throws Exception {
		Entry tags = tags();
		desk(1);
		assertFalse(page().isEditorAreaVisible());
		toTheBench();
		toTheDesk();
		grid(1).select(tags.number());
		Screen.key("Return");
		Screen.waitUntil("it is the bench", () -> isShown(Orders.BENCH_PERSPECTIVE_ID));
		Screen.waitUntil("the job lies on it", () -> page().getActiveEditor() instanceof BenchEditor bench
				&& bench.document() != null && bench.isUpToDate());
		assertTrue(page().isEditorAreaVisible());
		BenchEditor bench = (BenchEditor) page().getActiveEditor();
		assertTrue(bench.getEditorInput() instanceof PlaceInput);
		assertEquals(tags.title(), bench.document().job().getTitle());
		toTheDesk();
		// the same bench is found again, by key and by the book
		toTheBench();
		assertEquals(bench, page().getActiveEditor());
		toTheDesk();
		grid(1);
		Screen.key("Return");
		Screen.waitUntil("it is the bench again", () -> isShown(Orders.BENCH_PERSPECTIVE_ID));
		assertEquals(1, page().getEditorReferences().length);
	}

	/** A job that is begun at the desk lies on the bench, and its keys are heard. */
	@Test
	void newJobOfTheDeskIsBegunOnTheBench() throws Exception {
		desk(0);
		Screen.key("ctrl+n");
		Screen.waitUntil("it is the bench", () -> isShown(Orders.BENCH_PERSPECTIVE_ID));
		Screen.waitUntil("a job lies on it", () -> page().getActivePart() instanceof BenchEditor bench
				&& bench.document() != null && bench.isUpToDate());
		Screen.settle();
		Screen.type("Tern");
		BenchEditor bench = (BenchEditor) page().getActiveEditor();
		Screen.waitUntil("the word is typed", () -> Jobs.elements(bench.document().job()).stream()
				.anyMatch(each -> each instanceof Wording wording && "Tern".equals(wording.getText())));
		Screen.key("Escape");
		toTheDesk();
	}

	@Test
	void wholeDeskIsSeenOnSmallAndLargeScreens() throws Exception {
		Entry banner = SampleStudio.fill(book(), WEDNESDAY, "Ottoline").stream()
				.filter(each -> each.due().equals(Optional.of(WEDNESDAY.plusDays(1)))).findFirst().orElseThrow();
		OrderDesk.get().refresh();
		toTheDesk();
		Shell window = page().getWorkbenchWindow().getShell();
		Point usual = window.getSize();
		try {
			for (String size : List.of("large", "small")) {
				window.setSize(SIZES.get(size));
				((WeekView) page().findView(Orders.WEEK_ID)).showWeekOf(WEDNESDAY);
				grid(12).select(banner.number());
				whole(banner);
				Screen.keepScreen("desk-" + size);
				assertEquals(List.of(banner.number()), ((BookView) page().findView(Orders.BOOK_ID)).grid().selection().stream()
						.map(Entry::number).toList());
				int room = docket().page().getClientArea().width;
				Dialogs.all(docket().page()).filter(Button.class::isInstance).forEach(each -> {
					int end = each.toDisplay(each.getSize()).x - docket().page().toDisplay(0, 0).x;
					assertTrue(end <= room, Dialogs.text(each) + " ends at " + end + " of " + room);
				});
			}
		} finally {
			window.setSize(usual);
		}
	}
}
