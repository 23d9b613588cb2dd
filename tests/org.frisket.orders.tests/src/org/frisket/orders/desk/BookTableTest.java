package org.frisket.orders.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.studio.NameKey;
import org.junit.jupiter.api.Test;

/** What is found in an order book, against a plain search written for the test. */
class BookTableTest {

	private static final LocalDate TODAY = SampleEntries.TODAY;
	private static final String[] TEXTS = { "", "  ", "card", "CARD  tags", "ferry", "at cut", "harbour", "1", "12", "öse", "zz", "at on_hold",
			"ostley banner" };

	private static BookQuery query(Random random) {
		return new BookQuery(TEXTS[random.nextInt(TEXTS.length)], BookChoice.values()[random.nextInt(BookChoice.values().length)],
				BookColumn.values()[random.nextInt(BookColumn.values().length)], random.nextBoolean(),
				BookGrouping.values()[random.nextInt(BookGrouping.values().length)]);
	}

	private static boolean says(Entry job, String text) {
		String all = NameKey.of(job.words() + ' ' + job.number() + ' ' + SampleEntries.NAMES.stage(job.stage()) + ' ' + job.stock() + ' '
				+ BookOrder.stocks(job.stock(), SampleEntries.NAMES));
		return List.of(text.strip().split("\\s+")).stream().allMatch(word -> all.contains(word.toLowerCase()));
	}

	private static Comparable<?> key(Entry job, BookColumn column) {
		return switch (column) {
		case NUMBER -> job.number();
		case CUSTOMER -> job.customer().isEmpty() ? null : SortKey.of(job.customer());
		case TITLE -> SortKey.of(job.title());
		case STAGE -> job.stage().ordinal();
		case DUE -> job.due().map(LocalDate::toEpochDay).orElse(null);
		case STOCK -> job.stock().isEmpty() ? null : SortKey.of(BookOrder.stocks(job.stock(), SampleEntries.NAMES));
		case QUANTITY -> job.quantity();
		};
	}

	/** By insertion, one job after the other. */
	@SuppressWarnings("unchecked")
	private static List<Entry> plain(List<Entry> jobs, BookQuery query) {
		List<Entry> sorted = new ArrayList<>();
		for (Entry job : jobs) {
			if (!says(job, query.text()) || !query.choice().takes(job, TODAY)) {
				continue;
			}
			Comparable<Object> mine = (Comparable<Object>) key(job, query.column());
			int at = sorted.size();
			while (at > 0) {
				Comparable<Object> other = (Comparable<Object>) key(sorted.get(at - 1), query.column());
				boolean before = mine != null && (other == null || (query.descending() ? mine.compareTo(other) > 0
						: mine.compareTo(other) < 0));
				if (!before) {
					break;
				}
				at--;
			}
			sorted.add(at, job);
		}
		return sorted;
	}

	@Test
	void whatIsFoundIsWhatAPlainSearchFinds() {
		Random random = new Random(7);
		for (int round = 0; round < 60; round++) {
			List<Entry> jobs = SampleEntries.of(random.nextInt(90), round);
			BookTable table = BookTable.of(jobs, SampleEntries.NAMES);
			for (int i = 0; i < 8; i++) {
				BookQuery query = query(random);
				List<Entry> found = table.find(query, TODAY).jobs();
				assertEquals(plain(jobs, query), found, query.toString());
				BookLines lines = table.find(query.withGrouping(BookGrouping.NONE), TODAY).lines(Set.of());
				for (Entry job : jobs) {
					assertEquals(found.indexOf(job), lines.indexOf(new BookLine("", job.number())), query.toString());
					assertEquals(-1, lines.indexOf(new BookLine("card", job.number())), "it is a line of a group");
				}
				assertEquals(-1, lines.indexOf(new BookLine("", 1_000_000)));
			}
		}
	}

	@Test
	void typingOnFindsTheSameAsAskingAnew() {
		BookTable table = BookTable.of(SampleEntries.of(300, 3), SampleEntries.NAMES);
		Random random = new Random(11);
		for (int round = 0; round < 200; round++) {
			BookSight before = table.find(query(random), TODAY);
			BookQuery next = round % 2 == 0 ? before.query().withText(before.query().text() + "a") : query(random);
			assertEquals(table.find(next, TODAY).jobs(), table.find(next, TODAY, before).jobs(), before.query() + " " + next);
		}
	}

	@Test
	void narrowingLooksOnlyThroughWhatWasFound() {
		BookTable table = BookTable.of(SampleEntries.of(50, 1), SampleEntries.NAMES);
		BookQuery all = BookQuery.ALL.withText("ca");
		BookSight before = table.find(all, TODAY);
		assertTrue(before.isWider(table, all.withText("card"), TODAY));
		assertTrue(before.isWider(table, all.withText("card ferry").withChoice(BookChoice.LATE), TODAY));
		assertFalse(before.isWider(table, all.withText("c"), TODAY));
		assertFalse(before.isWider(table, all.withText("card"), TODAY.plusDays(1)));
		assertFalse(before.isWider(table, all.withText("card").sortedBy(BookColumn.TITLE), TODAY));
		assertFalse(table.find(all.withChoice(BookChoice.LATE), TODAY).isWider(table, all, TODAY));
	}

	@Test
	void everyJobIsInTheGroupsOfWhatItHasAndInNoOther() {
		Random random = new Random(5);
		for (int round = 0; round < 60; round++) {
			BookSight sight = BookTable.of(SampleEntries.of(80, round), SampleEntries.NAMES).find(query(random), TODAY);
			if (sight.query().grouping() == BookGrouping.NONE) {
				assertEquals(List.of(), sight.groups());
				continue;
			}
			BookLines lines = sight.lines(Set.of());
			Function<String, List<Entry>> expected = value -> sight.jobs().stream()
					.filter(job -> sight.query().grouping().of(job).contains(value)).toList();
			int index = 0;
			for (BookGroup group : sight.groups()) {
				assertEquals(new BookLine(group.value(), 0), lines.line(index++));
				List<Entry> members = new ArrayList<>();
				for (int i = 0; i < group.size(); i++) {
					members.add(lines.job(index++).orElseThrow());
				}
				assertEquals(expected.apply(group.value()), members);
			}
			assertEquals(index, lines.size());
			Set<String> values = sight.jobs().stream().flatMap(job -> sight.query().grouping().of(job).stream())
					.collect(Collectors.toSet());
			assertEquals(values, sight.groups().stream().map(BookGroup::value).collect(Collectors.toSet()));
		}
	}

	@Test
	void groupsStandInTheirOrderAndThoseOfNothingLast() {
		List<Entry> jobs = SampleEntries.of(200, 2);
		BookTable table = BookTable.of(jobs, SampleEntries.NAMES);
		List<Stage> stages = table.find(BookQuery.ALL.withGrouping(BookGrouping.STAGE), TODAY).groups().stream()
				.map(group -> Stage.valueOf(group.value())).toList();
		assertEquals(stages.stream().sorted().toList(), stages);
		assertEquals(10, stages.size());
		assertEquals(List.of("Ärmel & Co", "Odila Quern", "ostley ferry", "Wenzel Brook", ""),
				table.find(BookQuery.ALL.withGrouping(BookGrouping.CUSTOMER), TODAY).groups().stream().map(BookGroup::value).toList());
		List<String> weeks = table.find(BookQuery.ALL.withGrouping(BookGrouping.DUE_WEEK), TODAY).groups().stream()
				.map(BookGroup::value).toList();
		assertEquals("", weeks.get(weeks.size() - 1));
		assertEquals(weeks.stream().sorted(Comparator.comparing(String::isEmpty).thenComparing(week -> week)).toList(), weeks);
	}

	@Test
	void aFoldedGroupIsItsHeading() {
		BookSight sight = BookTable.of(SampleEntries.of(60, 4), SampleEntries.NAMES)
				.find(BookQuery.ALL.withGrouping(BookGrouping.STOCK), TODAY);
		BookGroup first = sight.groups().get(0);
		BookLines open = sight.lines(Set.of());
		BookLines folded = sight.lines(Set.of(first.value()));
		assertEquals(open.size() - first.size(), folded.size());
		assertTrue(folded.line(0).isHeading());
		assertTrue(folded.line(1).isHeading());
		for (int i = 0; i < folded.size(); i++) {
			assertEquals(i, folded.indexOf(folded.line(i)));
		}
		assertEquals(-1, folded.indexOf(open.line(1)));
		assertTrue(folded.isFolded(first));
	}

	@Test
	void filtersAreOfTheirDay() {
		Entry job = SampleEntries.of(1, 0).get(0);
		assertTrue(BookChoice.DUE_THIS_WEEK.takes(due(job, Stage.ORDERED, TODAY.plusDays(6)), TODAY), "Sunday");
		assertFalse(BookChoice.DUE_THIS_WEEK.takes(due(job, Stage.ORDERED, TODAY.plusDays(7)), TODAY), "next Monday");
		assertFalse(BookChoice.DUE_THIS_WEEK.takes(due(job, Stage.DELIVERED, TODAY), TODAY));
		assertTrue(BookChoice.LATE.takes(due(job, Stage.CUT, TODAY.minusDays(1)), TODAY));
		assertFalse(BookChoice.LATE.takes(due(job, Stage.CUT, TODAY), TODAY));
		assertTrue(BookChoice.AWAITING_APPROVAL.takes(due(job, Stage.DESIGNED, TODAY), TODAY));
		assertFalse(BookChoice.AWAITING_APPROVAL.takes(due(job, Stage.APPROVED, TODAY), TODAY));
		assertTrue(BookChoice.TO_CUT_TODAY.takes(due(job, Stage.PRINTED, TODAY.plusDays(1)), TODAY));
		assertFalse(BookChoice.TO_CUT_TODAY.takes(due(job, Stage.PRINTED, TODAY.plusDays(2)), TODAY));
		assertFalse(BookChoice.TO_CUT_TODAY.takes(due(job, Stage.CUT, TODAY), TODAY));
		assertEquals(BookGrouping.STOCK, BookQuery.ALL.withChoice(BookChoice.TO_CUT_TODAY).grouping());
	}

	private static Entry due(Entry job, Stage stage, LocalDate due) {
		return new Entry(job.id(), job.number(), 1, job.title(), job.customer(), stage, job.since(), Optional.of(due), 1, "", "",
				job.changed(), "");
	}

	@Test
	void aColumnAskedForAgainTurnsItsOrder() {
		BookQuery once = BookQuery.ALL.sortedBy(BookColumn.DUE);
		assertFalse(once.descending());
		assertTrue(once.sortedBy(BookColumn.DUE).descending());
		assertFalse(once.sortedBy(BookColumn.DUE).sortedBy(BookColumn.TITLE).descending());
		assertSame(BookColumn.TITLE, once.sortedBy(BookColumn.TITLE).column());
	}
}
