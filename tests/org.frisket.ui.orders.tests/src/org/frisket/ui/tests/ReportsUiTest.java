package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import org.frisket.model.Stage;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.reports.ReportsView;
import org.junit.jupiter.api.Test;

/** How the studio is doing, on the screen. */
class ReportsUiTest extends StudioOfOrders {

	@Override
	void fill() throws Exception {
		Instant now = Instant.now();
		Stage[] stages = { Stage.ORDERED, Stage.DESIGNED, Stage.DESIGNED, Stage.APPROVED, Stage.CUT, Stage.ORDERED };
		int[] ages = { 0, 3, 10, 20, 45, 12 };
		for (int i = 0; i < stages.length; i++) {
			OrderBook then = new OrderBook(studio, Clock.fixed(now.minus(Duration.ofDays(ages[i])), ZoneOffset.UTC));
			long number = then.add(new NewOrder("Place cards " + i, "", Optional.empty(), 1, ""), "Ottoline").number();
			then.stage(number, stages[i], "Ottoline", "");
		}
		for (int i = 0; i < 6; i++) {
			Instant at = now.minus(Duration.ofDays(35L * (i / 2)));
			OrderBook then = new OrderBook(studio, Clock.fixed(at, ZoneOffset.UTC));
			LocalDate due = at.atZone(ZoneId.systemDefault()).toLocalDate().plusDays(i % 3 - 1);
			long number = then.add(new NewOrder("Banner " + i, "", Optional.of(due), 1, ""), "Ottoline").number();
			then.stage(number, Stage.DELIVERED, "Ottoline", "");
		}
	}

	@Test
	void reportsFollowEachOtherByKeyAndAreWritten() throws Exception {
		ReportsView view = show(Orders.REPORTS_ID);
		Screen.waitUntil("it is read", () -> view.report().isPresent());
		Screen.settle();
		Screen.keepScreen("reports-stages");
		assertEquals("Jobs by stage and age", view.report().get().title());
		var designed = view.report().get().rows().stream().filter(row -> row.name().equals("Designed")).findFirst().orElseThrow();
		assertEquals(10, designed.values().get(5).getAsDouble());
		Screen.events("key", "ctrl+b", "Right");
		Screen.waitUntil("the next is read", () -> view.report().get().title().equals("Delivered in time, by month"));
		assertTrue(view.report().get().rows().size() >= 3, view.report().get().toString());
		Screen.settle();
		Screen.keepScreen("reports-on-time");
		Screen.events("key", "ctrl+b", "Left");
		Screen.events("key", "ctrl+b", "Left");
		Screen.waitUntil("the last comes before the first",
				() -> view.report().get().title().equals("Stock use and waste"));
		assertEquals(List.of(), view.report().get().rows(), "there was no run yet");
		Screen.events("key", "ctrl+b", "Left");
		Screen.events("key", "ctrl+b", "Left");
		Screen.waitUntil("the weeks are read",
				() -> view.report().get().title().equals("Delivered in time, by week"));
		Path table = home.resolve("weeks.csv");
		view.saveTable(table);
		Screen.waitUntil("it is written", () -> view.notice().contains("weeks.csv"));
		assertTrue(Files.readString(table).startsWith("Week,In time (%)"), Files.readString(table));
		Path paper = home.resolve("weeks.pdf");
		view.savePaper(paper);
		Screen.waitUntil("it is written", () -> view.notice().contains("weeks.pdf"));
		view.savePaper(home.resolve("no").resolve("such").resolve("folder.pdf"));
		Screen.waitUntil("it is told why not", () -> view.notice().contains("folder.pdf was not written"));
	}
}
