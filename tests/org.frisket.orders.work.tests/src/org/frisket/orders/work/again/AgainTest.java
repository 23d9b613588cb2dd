package org.frisket.orders.work.again;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.material.Stock;
import org.frisket.material.StockExchange;
import org.frisket.material.StockFamily;
import org.frisket.material.StockShelf;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Setup;
import org.frisket.material.trials.StockFacts;
import org.frisket.material.trials.Verdict;
import org.frisket.material.weights.Thickness;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Sheet;
import org.frisket.model.Stage;
import org.frisket.orders.OrderBook;
import org.frisket.orders.customers.Customers;
import org.frisket.prepare.Severity;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job is made again in a studio that has changed. */
class AgainTest {

	private static final FontLibrary NO_FONTS = new FontLibrary(List.of());

	@TempDir
	private Path folder;
	private StudioFolder studio;
	private Again again;

	@BeforeEach
	void makeStudio() throws Exception {
		studio = new StudioFolder(folder.resolve("studio"));
		again = new Again(studio, NO_FONTS);
		machine("scale-x", "1");
		SettingsDesk.change(studio, settings -> {
			settings.save(ToolOptions.tool(ToolKind.BLADE, "b1", Map.of("name", "Harbour blade", "offset", "0.3mm")));
			return null;
		});
		shelf(shelf -> shelf.add(card("216", "0.3")));
	}

	private void machine(String option, String text) throws Exception {
		SettingsDesk.change(studio, settings -> {
			settings.save(MachineOptions.machine("harbour", Map.of("name", "Harbour cutter", option, text)));
			return null;
		});
	}

	private static Stock card(String grammage, String caliper) {
		return Stock.named("Harbour white").id("white").family(StockFamily.CARD).grammage(new BigDecimal(grammage))
				.caliper(new Thickness(new BigDecimal(caliper))).build();
	}

	private interface Visit {
		void at(StockShelf shelf) throws Exception;
	}

	private void shelf(Visit visit) throws Exception {
		try (Store store = Store.open(studio, StockShelf.AREA)) {
			visit.at(new StockShelf(store));
		}
	}

	private static Job square() {
		Job job = Jobs.create("square", "Ferry token");
		job.setCustomer("Tern Bookshop");
		job.setQuantity(6);
		Layer layer = Jobs.addLayer(job, "Card");
		layer.setStock("white");
		Outline outline = Jobs.addOutline(layer, "M0 0h20v20h-20z");
		Jobs.addOperation(outline, OperationKind.CUT);
		return job;
	}

	private void ran(String id, Verdict verdict, double pressure, String day) throws Exception {
		String job = new OrderBook(studio).find(1).id();
		SettingsDesk.change(studio, settings -> {
			settings.add(new Run(id, Instant.parse(day + "T10:00:00Z"), job, StockFacts.of(card("216", "0.3")),
					new Setup("harbour", "b1", OperationKind.CUT), new Settings(0.4, pressure, 40, 2), verdict, 1, ""));
			return null;
		});
	}

	private static String said(List<Note> notes) {
		return String.join("\n", notes.stream().map(Note::sentence).toList());
	}

	@Test
	void nothingIsSaidWhereNothingChanged() throws Exception {
		new OrderBook(studio).takeIn(square(), "Ottoline");
		MadeWith.keep(studio, 1);
		assertEquals(List.of(), again.study(1, Wish.same()));
		Repeat repeat = again.order(1, new Wish(Optional.of(LocalDate.of(2031, 6, 1)), Optional.empty(), Stage.ENQUIRY), "Quill");
		assertEquals(Stage.ENQUIRY, repeat.order().stage());
		assertEquals(6, repeat.order().quantity());
		assertThrows(IllegalArgumentException.class, () -> new Wish(Optional.empty(), Optional.of(0), Stage.ORDERED));
	}

	@Test
	void machineAndToolAndStockAreComparedWithWhatTheyWere() throws Exception {
		new OrderBook(studio).takeIn(square(), "Ottoline");
		ran("r1", Verdict.THROUGH, 55, "2026-03-01");
		ran("r2", Verdict.TORN, 90, "2026-03-02");
		MadeWith.keep(studio, 1);
		machine("scale-x", "1.002");
		SettingsDesk.change(studio, settings -> settings.removeTool("b1"));
		shelf(shelf -> shelf.change(card("240", "0.3"), shelf.list().get(0).revision()));
		List<Note> notes = again.study(1, Wish.same());
		String said = said(notes);
		assertTrue(said.contains("was 216 g/m², is 240 g/m²"), said);
		assertTrue(said.contains("1.002") && said.contains("measure it"), said);
		assertTrue(said.contains("Harbour blade") && said.contains("gone"), said);
		assertTrue(said.contains("pressure 55") && !said.contains("pressure 90"), said);
		assertEquals(4, notes.size(), said);
		shelf(shelf -> shelf.exchange(List.of(StockExchange.remove(shelf.list().get(0)))));
		Note gone = again.study(1, Wish.same()).get(0);
		assertEquals(Severity.BLOCKING, gone.severity());
		assertTrue(gone.sentence().contains("Harbour white"), gone.sentence());
	}

	@Test
	void withoutMemoryTheLastRunTellsWhatTheStockWas() throws Exception {
		new OrderBook(studio).takeIn(square(), "Ottoline");
		ran("r1", Verdict.THROUGH, 55, "2026-03-01");
		shelf(shelf -> shelf.change(card("216", "0.35"), shelf.list().get(0).revision()));
		String said = said(again.study(1, Wish.same()));
		assertTrue(said.contains("was 0.3 mm, is 0.35 mm"), said);
		Repeat repeat = again.order(1, Wish.same(), "Quill");
		Job order = new OrderBook(studio).open(repeat.order().number()).job();
		assertEquals("b1", Jobs.elements(order).get(0).getOperations().get(0).getTool(), "the blade that did the work");
	}

	@Test
	void sheetsOfAnotherNumberAndPartsOfOthersAreLeftOut() throws Exception {
		Job job = square();
		Sheet sheet = Jobs.addSheet(job, "white", 210, 297);
		Jobs.addPlacement(sheet, Jobs.elements(job).get(0).getId(), 30, 30, 0);
		Jobs.addPlacement(sheet, "theirs", 90, 30, 0).setJob("guest");
		Guest guest = FrisketFactory.INSTANCE.createGuest();
		guest.setJob("guest");
		guest.setTitle("Banner");
		job.getGuests().add(guest);
		new OrderBook(studio).takeIn(job, "Ottoline");
		Repeat same = again.order(1, Wish.same(), "Quill");
		Job copy = new OrderBook(studio).open(same.order().number()).job();
		assertEquals(1, copy.getSheets().get(0).getPlacements().size());
		assertEquals(0, copy.getGuests().size());
		Repeat more = again.order(1, new Wish(Optional.empty(), Optional.of(12), Stage.ORDERED), "Quill");
		assertTrue(said(more.notes()).contains("lay the parts again"), said(more.notes()));
		assertEquals(0, new OrderBook(studio).open(more.order().number()).job().getSheets().size());
		assertEquals(2, new OrderBook(studio).open(1).job().getSheets().get(0).getPlacements().size(), "the original");
	}

	@Test
	void customerWhoWasForgottenIsAskedFor() throws Exception {
		new OrderBook(studio).takeIn(square(), "Ottoline");
		MadeWith.keep(studio, 1);
		Customers customers = new Customers(studio);
		customers.erase(customers.find("Tern Bookshop"), "Ottoline");
		String said = said(again.study(1, Wish.same()));
		assertTrue(said.contains("say for whom it is now"), said);
		assertTrue(!said.contains("Tern"), said);
	}
}
