package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.frisket.material.Caliper;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.StockField;
import org.frisket.material.weights.Thickness;
import org.frisket.studio.Studio;
import org.frisket.ui.material.internal.StudioShelf;
import org.frisket.ui.material.internal.shelf.StockEditor;
import org.junit.jupiter.api.Test;

/** The stock shelf and the form of a stock. */
class ShelfUiTest extends OpenShelf {

	private static final String RED = "Harbour card, red #c02020";

	@Test
	void sheetsAreSeenInTheirColourWithAnEdgeAsThickAsTheyAre() throws Exception {
		assertEquals(List.of("Harbour board", RED, "Harbour film"), names());
		ImageData picture = Screen.picture(shelf.canvas());
		Screen.keep(picture, "stock-shelf");
		Rectangle board = shelf.canvas().faceOf(0);
		Rectangle card = shelf.canvas().faceOf(1);
		assertColour("#4060a0", Screen.pixel(picture, board.x + 8, board.y + 10));
		assertColour("#c02020", Screen.pixel(picture, card.x + 8, card.y + 10));
		// 1 mm is far thicker than 65 lb: at this depth below the face there is edge here, and none there
		RGB edge = Screen.pixel(picture, board.x + 8, board.y + board.height + 6);
		RGB below = Screen.pixel(picture, card.x + 8, card.y + card.height + 6);
		assertColour(new RGB(0x30, 0x48, 0x78), edge);
		assertNotEquals(new RGB(0x90, 0x18, 0x18), below);
		Screen.keepScreen("stock-shelf-screen");
	}

	@Test
	void whatIsTypedFiltersAndTheOrderIsChosen() {
		Screen.type("film");
		Screen.waitUntil("only the film is left", () -> names().equals(List.of("Harbour film")));
		assertEquals("film", shelf.filter().getText());
		Screen.key("Escape");
		waitFor(3);
		shelf.orders().select(3);
		shelf.orders().notifyListeners(SWT.Selection, new Event());
		assertEquals(RED, names().get(0), "what is low comes first");
		shelf.orders().select(0);
		shelf.orders().notifyListeners(SWT.Selection, new Event());
		focus();
		Screen.key("End");
		assertEquals("Harbour film", shelf.canvas().selection().orElseThrow().name());
		Screen.key("Up");
		assertEquals(RED, shelf.canvas().selection().orElseThrow().name());
	}

	@Test
	void caliperIsMeasuredAndTakenBack() throws Exception {
		shelf.canvas().select("harbour-card-red-c02020");
		Screen.key("Return");
		StockEditor form = editor("Stock: " + RED);
		type(form, StockField.CALIPER, "12 mil");
		Screen.keep(Screen.picture(form.getShell()), "stock-form");
		Screen.key("Return");
		Screen.waitUntil("it is saved", () -> !Dialogs.isOpen("Stock: " + RED));
		assertEquals(new Caliper(Thickness.ofMils(new BigDecimal(12)), Caliper.Source.MEASURED),
				onDisk(RED).statedCaliper().orElseThrow());
		focus();
		Screen.key("ctrl+z");
		Screen.waitUntil("it is taken back", () -> find(RED).statedCaliper().isEmpty());
		assertTrue(onDisk(RED).statedCaliper().isEmpty());
		Screen.key("ctrl+shift+z");
		Screen.waitUntil("it is made again", () -> find(RED).statedCaliper().isPresent());
		assertTrue(onDisk(RED).statedCaliper().isPresent());
	}

	private static Stock find(String name) {
		return StudioShelf.get().stocks().stream().map(ShelvedStock::stock).filter(each -> each.name().equals(name))
				.findFirst().orElseThrow();
	}

	@Test
	void whatCannotBeSoIsRefusedBesideTheField() throws Exception {
		List<ShelvedStock> before = onDisk();
		shelf.canvas().select("harbour-board");
		Screen.key("F2");
		StockEditor form = editor("Stock: Harbour board");
		type(form, StockField.CALIPER, "12 mm");
		type(form, StockField.ON_HAND, "-41");
		Screen.key("Return");
		Screen.waitUntil("it is refused", () -> form.problem(StockField.ON_HAND).contains("below zero"));
		assertTrue(Dialogs.isOpen("Stock: Harbour board"), "it stays open");
		assertEquals("", form.problem(StockField.CALIPER), "12 mm of board is much, but can be");
		type(form, StockField.ON_HAND, "+10");
		assertEquals("", form.problem(StockField.ON_HAND));
		type(form, StockField.CALIPER, "thick");
		Screen.key("Return");
		Screen.waitUntil("it is refused", () -> form.problem(StockField.CALIPER).contains("“thick”"));
		Screen.keep(Screen.picture(form.getShell()), "stock-form-refused");
		assertEquals(before, onDisk());
		press(form.getShell(), "Cancel");
		assertEquals(before, onDisk());
	}

	@Test
	void whatIsRemovedComesBack() throws Exception {
		List<String> before = onDisk().stream().map(each -> each.stock().toString()).toList();
		shelf.canvas().select("harbour-film");
		Screen.key("Delete");
		waitFor(2);
		assertEquals(2, onDisk().size());
		Screen.key("ctrl+z");
		waitFor(3);
		assertEquals(before, onDisk().stream().map(each -> each.stock().toString()).toList());
		shelf.canvas().select("harbour-film");
		Screen.key("plus");
		Screen.waitUntil("one more is there",
				() -> find("Harbour film").onHand().compareTo(new BigDecimal("5.5")) == 0);
	}

	@Test
	void anotherDeskIsSeenAndNotOverwritten() throws Exception {
		shelf.canvas().select("harbour-board");
		Screen.key("Return");
		StockEditor form = editor("Stock: Harbour board");
		type(form, StockField.NOTES, "Score twice");
		elsewhere(there -> {
			ShelvedStock seen = there.find("harbour-board").orElseThrow();
			there.change(seen.stock().change().onHand(new BigDecimal(7)).build(), seen.revision());
		});
		Screen.waitUntil("the other desk's count is seen",
				() -> find("Harbour board").onHand().compareTo(new BigDecimal(7)) == 0);
		assertTrue(form.getErrorMessage().contains("Somebody else has changed"), form.getErrorMessage());
		press(form.getShell(), "Save");
		Screen.waitUntil("it is refused", () -> form.getErrorMessage().contains("changed by somebody else"));
		assertEquals("", onDisk("Harbour board").notes());
		press(form.getShell(), "Bring Both Together");
		press(form.getShell(), "Save");
		Screen.waitUntil("it is saved", () -> !Dialogs.isOpen("Stock: Harbour board"));
		assertEquals("Score twice", onDisk("Harbour board").notes());
		assertEquals(new BigDecimal(7), onDisk("Harbour board").onHand());
	}

	@Test
	void thousandStocksAreScrolledThroughWhileOnlyThoseInSightArePainted() throws Exception {
		List<Stock> many = new ArrayList<>();
		for (int i = 0; i < 1000; i++) {
			many.add(Stock.named("Harbour paper %03d".formatted(i)).family(StockFamily.PAPER)
					.grammage(new BigDecimal(60 + i % 100)).build());
		}
		elsewhere(there -> there.put(many));
		waitFor(1003);
		Screen.key("End");
		assertEquals("Harbour paper 999", shelf.canvas().selection().orElseThrow().name());
		assertTrue(shelf.canvas().painted() < 30, "painted " + shelf.canvas().painted());
		assertFalse(shelf.canvas().painted() == 0);
		Screen.key("Page_Up");
		assertTrue(shelf.canvas().painted() < 30, "painted " + shelf.canvas().painted());
	}

	@Test
	void shelfThatAnotherProgramHoldsStaysToBeLookedAt() throws Exception {
		List<ShelvedStock> before = onDisk();
		try (FileChannel lock = FileChannel.open(Studio.folder().databaseLock(), StandardOpenOption.WRITE)) {
			Screen.waitUntil("nobody else has it", () -> isLocked(lock));
			Screen.key("Delete");
			Screen.waitUntil("it is told", () -> shelf.notice().contains("another program is using it"));
			assertEquals(3, names().size(), "all is still seen");
			Screen.keep(Screen.picture(shelf.canvas().getParent().getParent()), "stock-shelf-locked");
		}
		assertEquals(before, onDisk());
		Screen.key("Delete");
		waitFor(2);
		assertEquals("", shelf.notice());
	}

	private static boolean isLocked(FileChannel channel) {
		try {
			return channel.tryLock() != null;
		} catch (OverlappingFileLockException | IOException usedByUs) {
			return false;
		}
	}

	@Test
	void severalStepsAreTakenBackAndMadeAgain() throws Exception {
		List<Stock> before = onDisk().stream().map(ShelvedStock::stock).toList();
		shelf.canvas().select("harbour-film");
		Screen.key("plus");
		Screen.waitUntil("one more", () -> find("Harbour film").onHand().compareTo(new BigDecimal("5.5")) == 0);
		Screen.key("plus");
		Screen.waitUntil("two more", () -> find("Harbour film").onHand().compareTo(new BigDecimal("6.5")) == 0);
		Screen.key("Delete");
		waitFor(2);
		Screen.key("ctrl+z");
		waitFor(3);
		Screen.key("ctrl+z");
		Screen.waitUntil("one more", () -> find("Harbour film").onHand().compareTo(new BigDecimal("5.5")) == 0);
		Screen.key("ctrl+z");
		Screen.waitUntil("all is as it was", () -> StudioShelf.get().stocks().stream().map(ShelvedStock::stock).toList()
				.equals(before));
		assertEquals("", shelf.notice());
	}
}
