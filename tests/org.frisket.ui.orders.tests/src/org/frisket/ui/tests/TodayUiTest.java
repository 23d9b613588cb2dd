package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.StockShelf;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Placement;
import org.frisket.model.Stage;
import org.frisket.orders.OrderBook;
import org.frisket.orders.work.RunBook;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Store;
import org.frisket.ui.bench.PlaceInput;
import org.frisket.ui.bench.StudioChoice;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.today.TodayView;
import org.frisket.ui.sheets.internal.sheets.SheetsView;
import org.frisket.ui.views.Views;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A day's list: jobs are picked, laid together, done and taken back, all by keys. */
class TodayUiTest extends OpenBench {

	private static final String CARD = "harbour-card";

	private Path home;
	private TodayView today;

	@BeforeEach
	void openToday() throws Exception {
		home = Files.createTempDirectory("home");
		Studio.choose(Optional.of(home.resolve("studio")));
		try (Store store = Store.open(Studio.folder(), StockShelf.AREA)) {
			new StockShelf(store).add(Stock.named("Harbour card").id(CARD).family(StockFamily.CARD)
					.grammage(new BigDecimal(250)).onHand(new BigDecimal(9)).build());
		}
		OrderDesk.get().refresh();
		today = (TodayView) page().showView(Orders.TODAY_ID);
		focus();
	}

	@AfterEach
	void backToTheUsualStudio() throws Exception {
		Arrays.stream(Display.getCurrent().getShells()).filter(each -> each.getData() instanceof Dialog)
				.filter(each -> each.getParent() != null && !each.isDisposed()).forEach(Shell::close);
		page().hideView(today);
		page().hideView(page().findView(Views.SHEETS_ID));
		page().closeAllEditors(false);
		StudioChoice.apply();
		OrderDesk.get().refresh();
		Screen.settle();
		try (Stream<Path> all = Files.walk(home)) {
			for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
				Files.deleteIfExists(each);
			}
		} catch (IOException closing) {
			// what the store leaves when it is closed
		}
	}

	private void focus() {
		bringToFront(today.getSite().getShell());
		page().activate(today);
		Screen.settle();
	}

	private static long approved(String title, int quantity, LocalDate due) throws Exception {
		Job job = Jobs.create("job", title);
		job.setQuantity(quantity);
		job.setDue(due);
		job.setCustomer("Brindle Sound Ferries");
		Layer layer = Jobs.addLayer(job, "Card");
		layer.setStock(CARD);
		Jobs.addOperation(Jobs.addOutline(layer, "M0 0H60V60H0Z"), OperationKind.CUT);
		job.setStage(Stage.APPROVED);
		return new OrderBook(Studio.folder()).takeIn(List.of(job), true, "Ottoline").get(0).number();
	}

	private static List<TreeItem> items(Tree tree) {
		return Arrays.stream(tree.getItems()).flatMap(item -> Stream.concat(Stream.of(item), Arrays.stream(item.getItems())))
				.toList();
	}

	private static boolean shows(Tree tree, String text) {
		return items(tree).stream().anyMatch(item -> item.getText().contains(text));
	}

	private static Stage stage(long number) {
		try {
			return new OrderBook(Studio.folder()).find(number).stage();
		} catch (Exception e) {
			throw new AssertionError(e);
		}
	}

	/** The layout is a job of the order book, and so are those whose parts lie on its sheets: none is a file. */
	private void partsOfAllGuestsLie(List<String> titles, int copies) {
		Screen.waitUntil("the layout is on the bench", () -> page().getActiveEditor() instanceof BenchEditor layout
				&& layout.document() != null && layout.getEditorInput() instanceof PlaceInput);
		Job layout = ((BenchEditor) page().getActiveEditor()).document().job();
		assertEquals(titles, layout.getGuests().stream().map(Guest::getTitle).sorted().toList());
		assertTrue(layout.getGuests().stream().allMatch(guest -> guest.getFile() == null));
		List<Placement> placements = layout.getSheets().stream().flatMap(sheet -> sheet.getPlacements().stream()).toList();
		assertEquals(copies, placements.size());
		SheetsView sheets = (SheetsView) page().findView(Views.SHEETS_ID);
		Screen.waitUntil("every part lies on its sheet", () -> sheets.isSettled()
				&& placements.stream().allMatch(each -> sheets.picture(each).isPresent()));
		assertFalse(Files.exists(home.resolve("studio/runs")));
		Screen.settle();
	}

	@Test
	void colourOfALayerIsSeenAndSaidInWords() throws Exception {
		Job job = Jobs.create("job", "Gift tags");
		for (String colour : List.of("#b0452f", "#2f5fa6", "#2f5fa7")) {
			Layer layer = Jobs.addLayer(job, colour);
			layer.setStock(CARD);
			layer.setColour(colour);
			Jobs.addOperation(Jobs.addOutline(layer, "M0 0H60V60H0Z"), OperationKind.CUT);
		}
		job.setStage(Stage.APPROVED);
		new OrderBook(Studio.folder()).takeIn(List.of(job), true, "Ottoline");
		Screen.waitUntil("its colours are listed", () -> today.cutTree().getItemCount() == 3);
		List<TreeItem> groups = List.of(today.cutTree().getItems());
		assertEquals(List.of("Harbour card blue #2f5fa6", "Harbour card blue #2f5fa7", "Harbour card red"),
				groups.stream().map(each -> each.getText().replaceFirst(" \u00b7.*", "")).sorted().toList());
		assertTrue(groups.stream().allMatch(each -> each.getImage() != null));
		Screen.keepScreen("today-colours");
	}

	@Test
	void jobsAreLaidTogetherDoneAndTakenBackByKeys() throws Exception {
		Screen.waitUntil("the list is read", () -> today.footText().isEmpty() && !today.cutTree().isVisible());
		Screen.keepScreen("today-empty");
		long tags = approved("Gift tags", 4, LocalDate.of(2031, 5, 12));
		long cards = approved("Place cards", 6, null);
		// another desk has brought them; nobody here does anything
		Screen.waitUntil("they are seen", () -> shows(today.cutTree(), "Place cards"));
		assertEquals("Harbour card \u00b7 10 missing", today.cutTree().getItem(0).getText());
		assertTrue(today.cautionText().startsWith("Keep hands"), today.cautionText());
		focus();
		Screen.waitUntil("the list listens", () -> today.cutTree().isFocusControl() || today.cutTree().setFocus());
		Screen.key("Home");
		Screen.key("space");
		Screen.waitUntil("the whole stock is picked", () -> today.picks().numbers().equals(List.of(tags, cards)));
		Screen.waitUntil("sheets are counted", () -> today.footText().endsWith("about 1 sheet"));
		Screen.key("Down");
		Screen.key("space");
		Screen.waitUntil("one is picked", () -> today.picks().numbers().equals(List.of(cards)));
		Screen.key("space");
		Screen.waitUntil("both are picked", () -> today.picks().pieces() == 10);
		Screen.keepScreen("today-picked");
		Screen.events("key", "ctrl+b", "i");
		Screen.waitUntil("a run is under way", () -> shows(today.cutTree(), "Run 1"));
		partsOfAllGuestsLie(List.of("Gift tags", "Place cards"), 10);
		Screen.keepScreen("today-laid");
		focus();
		Screen.waitUntil("the list listens again", () -> today.cutTree().isFocusControl() || today.cutTree().setFocus());
		Screen.key("Home");
		Dialogs.answer("Say it is done", () -> Screen.eventsWhileBusy("key", "ctrl+b", "d"), () -> {
			try {
				Screen.keepScreen("today-done");
			} catch (IOException e) {
				throw new AssertionError(e);
			}
		});
		Screen.waitUntil("both are to be finished",
				() -> shows(today.finishTree(), "Gift tags") && shows(today.finishTree(), "Place cards"));
		assertEquals(Stage.CUT, stage(tags));
		assertEquals(Stage.CUT, stage(cards));
		Screen.keepScreen("today-finish");
		focus();
		Screen.key("ctrl+z");
		Screen.waitUntil("it is taken back", () -> shows(today.cutTree(), "Run 1") && !shows(today.finishTree(), "Gift tags"));
		assertEquals(Stage.APPROVED, stage(tags));
		assertEquals(1, new RunBook(Studio.folder()).open().size());
	}
}
