package org.frisket.orders.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

import org.frisket.orders.Entry;
import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Filters that were kept, days as they are typed, jobs that are known. */
class DeskTest {

	@TempDir
	Path home;

	@Test
	void filtersAreKeptByName() throws Exception {
		SavedFilters filters = new SavedFilters(new StudioFolder(home.resolve("studio")));
		assertEquals(List.of(), filters.list());
		BookQuery late = BookQuery.ALL.withText("“tags” \\ = \n").withChoice(BookChoice.LATE).sortedBy(BookColumn.DUE);
		filters.put(new SavedFilter("Quay", BookQuery.ALL));
		filters.put(new SavedFilter("Ärger", late));
		assertEquals(List.of(new SavedFilter("Ärger", late), new SavedFilter("Quay", BookQuery.ALL)), filters.list());
		filters.put(new SavedFilter("quay", late));
		assertEquals(List.of("Ärger", "quay"), filters.list().stream().map(SavedFilter::name).toList());
		filters.remove("QUAY");
		assertEquals(List.of(new SavedFilter("Ärger", late)), filters.list());
	}

	@Test
	void whatIsNoFilterIsLeftOut() throws Exception {
		StudioFolder studio = new StudioFolder(home.resolve("studio"));
		studio.openForWriting();
		studio.preferences().put("orders.filters", "[{\"name\":\"Old\",\"choice\":\"WHO_KNOWS\"},{\"text\":\"x\"},null]");
		assertEquals(List.of(new SavedFilter("Old", BookQuery.ALL.sortedBy(BookColumn.NUMBER))), new SavedFilters(studio).list());
		studio.preferences().put("orders.filters", "{nothing");
		assertEquals(List.of(), new SavedFilters(studio).list());
		assertTrue(SavedFilters.objection("  ").length() > 0);
		assertTrue(SavedFilters.objection("x".repeat(61)).length() > 0);
		assertEquals("", SavedFilters.objection("x".repeat(60)));
	}

	@Test
	void daysAreUnderstoodAsTheyAreWritten() {
		LocalDate today = SampleEntries.TODAY;
		LocalDate day = LocalDate.of(2026, 12, 4);
		assertEquals(Optional.empty(), DueDay.parse("  ", today, Locale.ENGLISH));
		assertEquals(Optional.of(day), DueDay.parse("2026-12-04", today, Locale.ENGLISH));
		assertEquals(Optional.of(day), DueDay.parse(" +4 ", today, Locale.ENGLISH));
		assertEquals(Optional.of(day), DueDay.parse("04.12.26", today, Locale.GERMANY));
		assertEquals(Optional.of(day), DueDay.parse("04.12.2026", today, Locale.GERMANY));
		for (String none : new String[] { "soon", "2026-02-30", "+", "-3", "+99999" }) {
			String message = assertThrows(IllegalArgumentException.class, () -> DueDay.parse(none, today, Locale.ENGLISH)).getMessage();
			assertTrue(message.contains(none), message);
		}
	}

	@Test
	void changesAreMergedAsAPlainMapWouldHaveThem() {
		Random random = new Random(1);
		for (int round = 0; round < 100; round++) {
			List<Entry> all = SampleEntries.of(40, round);
			List<Entry> before = all.stream().filter(job -> random.nextBoolean()).toList();
			List<Entry> changed = new ArrayList<>(SampleEntries.of(40, round + 1000).stream().filter(job -> random.nextInt(4) == 0).toList());
			Collections.shuffle(changed, random);
			TreeMap<Long, Entry> plain = new TreeMap<>(Comparator.reverseOrder());
			before.forEach(job -> plain.put(job.number(), job));
			changed.forEach(job -> plain.put(job.number(), job));
			KnownJobs merged = KnownJobs.of(before, List.of()).with(changed, List.of());
			assertEquals(List.copyOf(plain.values()), merged.jobs());
			for (long number = 0; number < 42; number++) {
				assertEquals(Optional.ofNullable(plain.get(number)), merged.find(number));
			}
		}
	}
}
