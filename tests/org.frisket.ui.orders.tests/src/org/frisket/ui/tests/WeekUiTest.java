package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.model.Job;
import org.frisket.orders.Entry;
import org.frisket.orders.NewOrder;
import org.frisket.orders.week.DueChange;
import org.frisket.orders.week.WeekPlan;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.week.WeekStrip;
import org.junit.jupiter.api.Test;

/** The week is gone through by keys, and jobs are put on other days. */
class WeekUiTest extends OpenDocket {

	private static long shown(WeekStrip strip) {
		return strip.selected().map(Entry::number).orElse(0L);
	}

	@Test
	void weekIsGoneThroughByKeysAndDaysAreChangedAndUndone() throws Exception {
		Entry late = order("Place cards", "Gull Ferry Line", LocalDate.of(2027, 2, 26));
		Entry monday = order("Shop-window alphabet", "Tern Bookshop", LocalDate.of(2027, 3, 1));
		Entry today = order("Ferry banner", "Gull Ferry Line", WEDNESDAY);
		Entry second = order("Menu boards", "Cormorant Kitchen", WEDNESDAY);
		Entry later = order("Gift tags", "Tern Bookshop", LocalDate.of(2027, 3, 15));
		order("One day", "", null);
		WeekStrip strip = desk(5);
		page().activate(page().findView(Orders.WEEK_ID));
		Screen.waitUntil("the week listens", () -> strip.isFocusControl() || strip.setFocus());
		Screen.key("Right");
		assertEquals(today.number(), shown(strip));
		whole(today);
		assertTrue(strip.said(ACC.CHILDID_SELF).startsWith("Wed 3, today, 1 of 2: " + today.number() + " Ferry banner"),
				strip.said(ACC.CHILDID_SELF));
		Screen.key("Down");
		assertEquals(second.number(), shown(strip));
		assertTrue(strip.said(0).startsWith("Late, 1 of 1: " + late.number()), strip.said(0));
		Screen.key("Right");
		assertEquals(later.number(), shown(strip));
		Screen.key("Left");
		Screen.key("Left");
		assertEquals(monday.number(), shown(strip));
		Screen.key("Left");
		assertEquals(late.number(), shown(strip));
		whole(late);
		Screen.keepScreen("week");
		click(strip, today);
		Screen.key("shift+Right");
		due(strip, today, LocalDate.of(2027, 3, 4));
		Screen.key("ctrl+z");
		due(strip, today, WEDNESDAY);
		Rectangle from = strip.boundsOf(strip.plan().find(monday.number()).orElseThrow());
		int column = 1 + WEDNESDAY.plusDays(2).getDayOfWeek().getValue();
		int friday = strip.boundsOf(new WeekPlan.Place(column - 1, 0)).x + 20;
		Screen.drag(strip, from.x + 20, from.y + 20, friday, from.y + 40);
		due(strip, monday, LocalDate.of(2027, 3, 5));
	}

	private static void due(WeekStrip strip, Entry entry, LocalDate day) throws Exception {
		Screen.waitUntil(entry.title() + " is due on " + day, () -> strip.plan().find(entry.number()).map(strip.plan()::job)
				.flatMap(Entry::due).equals(Optional.of(day)));
		assertEquals(Optional.of(day), book().find(entry.number()).due());
		Screen.settle();
	}

	@Test
	void stepThatSomebodyElseOvertookBarsNoneBeforeIt() throws Exception {
		Entry first = order("Ferry banner", "Gull Ferry Line", WEDNESDAY);
		Entry second = order("Menu boards", "Cormorant Kitchen", WEDNESDAY);
		WeekStrip strip = desk(2);
		page().activate(page().findView(Orders.WEEK_ID));
		Screen.waitUntil("the week listens", () -> strip.isFocusControl() || strip.setFocus());
		for (Entry entry : List.of(first, second)) {
			click(strip, entry);
			Screen.key("shift+Right");
			due(strip, entry, WEDNESDAY.plusDays(1));
		}
		new DueChange(second.number(), Optional.of(WEDNESDAY.plusDays(1)), Optional.of(WEDNESDAY.plusDays(2)))
				.go(book(), "Another desk");
		Screen.waitUntil("it is seen", () -> strip.plan().find(second.number()).map(strip.plan()::job).flatMap(Entry::due)
				.equals(Optional.of(WEDNESDAY.plusDays(2))));
		Screen.key("ctrl+z");
		StudioOfOrders.quiet();
		due(strip, second, WEDNESDAY.plusDays(2));
		Screen.key("ctrl+z");
		due(strip, first, WEDNESDAY);
	}

	@Test
	void dayWithHundredsOfJobsScrollsToItsLast() throws Exception {
		List<Job> jobs = new ArrayList<>();
		for (int i = 0; i < 400; i++) {
			jobs.add(new NewOrder("Place cards " + i, "Guest " + i, Optional.of(WEDNESDAY.plusDays(i % 3)), 1, "").toJob());
		}
		book().takeIn(jobs, true, "Ottoline");
		WeekStrip strip = desk(400);
		page().activate(page().findView(Orders.WEEK_ID));
		Screen.waitUntil("the week listens", () -> strip.isFocusControl() || strip.setFocus());
		Screen.key("Down");
		Screen.key("End");
		WeekPlan.Place last = strip.plan().find(shown(strip)).orElseThrow();
		assertEquals(strip.plan().columns().get(last.column()).jobs().size() - 1, last.row());
		Rectangle box = strip.boundsOf(last);
		assertTrue(box.y > 0 && box.y + box.height <= strip.getClientArea().height, box.toString());
		Screen.click(strip, box.x + 10, box.y + 10);
		assertEquals(last, strip.plan().find(shown(strip)).orElseThrow());
		Screen.keepScreen("week-400");
	}
}
