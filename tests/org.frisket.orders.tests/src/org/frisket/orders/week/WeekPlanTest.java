package org.frisket.orders.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.JobChangedException;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is due stands on its day. */
class WeekPlanTest {

	private static final LocalDate WEDNESDAY = LocalDate.of(2027, 3, 3);

	private static Entry job(long number, Stage stage, LocalDate due) {
		return new Entry("job-" + number, number, 1, "Place cards", "Gull Ferry Line", stage, Instant.EPOCH,
				Optional.ofNullable(due), 1, "", "", Instant.EPOCH, "");
	}

	@Test
	void everyJobThatIsStillToBeMadeStandsInOneColumn() {
		Random random = new Random(20270303);
		for (int round = 0; round < 200; round++) {
			LocalDate today = WEDNESDAY.plusDays(random.nextInt(7));
			LocalDate monday = today.minusDays(today.getDayOfWeek().getValue() - 1L);
			List<Entry> jobs = new ArrayList<>();
			for (int i = 0; i < random.nextInt(120); i++) {
				jobs.add(job(i + 1, Stage.values()[random.nextInt(Stage.values().length)],
						random.nextInt(9) == 0 ? null : today.plusDays(random.nextInt(30) - 15)));
			}
			WeekPlan plan = WeekPlan.of(jobs, today);
			assertEquals(9, plan.columns().size());
			for (Entry job : jobs) {
				Optional<WeekPlan.Place> place = plan.find(job.number());
				if (job.isClosed() || job.due().isEmpty()) {
					assertTrue(place.isEmpty(), job.toString());
				} else if (place.isPresent()) {
					LocalDate due = job.due().get();
					int column = place.get().column();
					assertEquals(due.isBefore(monday) ? 0 : due.isAfter(monday.plusDays(6)) ? 8 : due.getDayOfWeek().getValue(), column,
							job.toString());
					assertEquals(job, plan.job(place.get()));
				} else {
					assertTrue(job.due().get().isAfter(monday.plusDays(6)) && plan.columns().get(8).more() > 0, job.toString());
				}
			}
			long open = jobs.stream().filter(job -> !job.isClosed() && job.due().isPresent()).count();
			assertEquals(open, plan.size() + plan.columns().get(8).more());
			for (int i = 0; i < plan.size(); i++) {
				assertEquals(i, plan.indexOf(plan.at(i).orElseThrow()));
			}
			assertEquals(Optional.empty(), plan.at(plan.size()));
			assertEquals(Optional.empty(), plan.at(-1));
			for (WeekPlan.Column column : plan.columns()) {
				List<LocalDate> days = column.jobs().stream().map(job -> job.due().orElseThrow()).toList();
				assertEquals(days.stream().sorted().toList(), days);
				assertEquals(column.kind() == WeekPlan.Kind.DAY, column.day().isPresent());
			}
		}
	}

	@Test
	void weekBeginsOnMondayOnSundaysToo() {
		WeekPlan plan = WeekPlan.of(List.of(), LocalDate.of(2027, 3, 7));
		assertEquals(Optional.of(LocalDate.of(2027, 3, 1)), plan.columns().get(1).day());
		assertEquals(DayOfWeek.MONDAY, plan.columns().get(1).day().get().getDayOfWeek());
		assertEquals(Optional.of(LocalDate.of(2027, 3, 7)), plan.columns().get(7).day());
		assertEquals(Optional.empty(), plan.first());
	}

	@Test
	void keysGoFromJobToJobAndOverEmptyDays() {
		WeekPlan plan = WeekPlan.of(List.of(job(1, Stage.ORDERED, WEDNESDAY.minusDays(9)), job(2, Stage.ORDERED, WEDNESDAY),
				job(3, Stage.ENQUIRY, WEDNESDAY), job(4, Stage.CUT, WEDNESDAY.plusDays(3))), WEDNESDAY);
		WeekPlan.Place first = plan.first().orElseThrow();
		assertEquals(3, plan.job(first).number());
		assertEquals(2, plan.job(plan.along(first, 5)).number());
		assertEquals(3, plan.job(plan.along(first, -1)).number());
		assertEquals(4, plan.job(plan.beside(plan.along(first, 1), 1).orElseThrow()).number());
		assertEquals(1, plan.job(plan.beside(first, -1).orElseThrow()).number());
		assertTrue(plan.beside(plan.beside(first, -1).orElseThrow(), -1).isEmpty());
		// on Sunday what was due on Saturday is the next there is
		WeekPlan sunday = WeekPlan.of(List.of(job(4, Stage.CUT, WEDNESDAY.plusDays(3))), WEDNESDAY.plusDays(4));
		assertEquals(4, sunday.job(sunday.first().orElseThrow()).number());
	}

	@Test
	void dueDayGoesThereAndBackUnlessSomebodySaidAnother(@TempDir Path folder) throws Exception {
		OrderBook book = new OrderBook(new StudioFolder(folder.resolve("studio")).openForWriting());
		Entry added = book.add(new NewOrder("Ferry banner", "", Optional.of(WEDNESDAY), 1, ""), "Ottoline");
		DueChange way = new DueChange(added.number(), added.due(), Optional.of(WEDNESDAY.plusDays(1)));
		assertEquals(Optional.of(WEDNESDAY.plusDays(1)), way.go(book, "Ottoline").due());
		assertEquals(Optional.of(WEDNESDAY), way.back().go(book, "Ottoline").due());
		new DueChange(added.number(), added.due(), Optional.empty()).go(book, "Barnaby");
		assertThrows(JobChangedException.class, () -> way.go(book, "Ottoline"));
		assertEquals(Optional.empty(), book.find(added.number()).due());
	}
}
