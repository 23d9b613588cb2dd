package org.frisket.orders.work;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.impose.Budget;
import org.frisket.impose.Turning;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.StockShelf;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.sheets.imposing.LayingChoices;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;

/** A small Harbour Lane with card on its shelf and jobs of squares. */
record SampleStudio(StudioFolder folder) {

	static final LocalDate DAY = LocalDate.of(2031, 5, 12);
	static final Clock CLOCK = Clock.fixed(Instant.parse("2031-05-12T09:00:00Z"), ZoneOffset.UTC);
	static final String WHO = "Ottoline";
	static final String CARD = "harbour-card";
	static final String FILM = "quay-film";
	private static final String SQUARE = "M0 0H%1$sV%1$sH0Z";

	OrderBook book() {
		return new OrderBook(folder, CLOCK);
	}

	RunBook runs() {
		return new RunBook(folder, CLOCK);
	}

	void shelve(String id, String onHand) throws Exception {
		try (Store store = Store.open(folder, StockShelf.AREA)) {
			new StockShelf(store).add(Stock.named(id).id(id).family(StockFamily.CARD).grammage(new BigDecimal("250"))
					.onHand(new BigDecimal(onHand)).build());
		}
	}

	BigDecimal onHand(String id) throws Exception {
		try (Store store = Store.openForReading(folder, StockShelf.AREA)) {
			return new StockShelf(store).find(id).orElseThrow().stock().onHand();
		}
	}

	/** A job that is approved. @param stocks a square of 60 mm is cut of each */
	long approved(String title, int quantity, LocalDate due, String... stocks) throws Exception {
		return approved(job(title, quantity, due, stocks));
	}

	long approved(Job job) throws Exception {
		job.setStage(Stage.APPROVED);
		return book().takeIn(List.of(job), true, WHO).get(0).number();
	}

	static Job job(String title, int quantity, LocalDate due, String... stocks) {
		Job job = Jobs.create("job", title);
		job.setQuantity(quantity);
		job.setDue(due);
		for (String stock : stocks) {
			Layer layer = Jobs.addLayer(job, stock);
			layer.setStock(stock);
			Jobs.addOperation(Jobs.addOutline(layer, SQUARE.formatted("60")), OperationKind.CUT);
		}
		return job;
	}

	Entry entry(long number) throws Exception {
		return book().find(number);
	}

	Gang gang() {
		return new Gang(folder, CLOCK, new JobPreparer(FontLibraries.installed()), LayerLimits.byStock(StockLimits.BUILT_IN));
	}

	static LayingChoices sheets(double width, double height) {
		return new LayingChoices(width, height, false, 2, 5, Turning.NONE, false, false, 1, 0);
	}

	PlannedRun plan(Long... numbers) throws Exception {
		return plan(sheets(210, 297), numbers);
	}

	PlannedRun plan(LayingChoices choices, Long... numbers) throws Exception {
		Gang.Laid laid = gang().lay(List.of(numbers), choices, Budget.steps(0, 1), better -> {
			// the first will do
		}, Monitor.NONE);
		return gang().keep(laid, WHO, false);
	}

	Today today() throws Exception {
		return new TodayList(folder).read(DAY);
	}
}
