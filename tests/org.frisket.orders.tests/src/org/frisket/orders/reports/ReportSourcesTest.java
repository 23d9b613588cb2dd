package org.frisket.orders.reports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports as tables for people. */
class ReportSourcesTest {

	private static final Clock CLOCK = Clock.fixed(Instant.parse("2027-01-08T12:00:00Z"), ZoneOffset.UTC);

	@TempDir
	private Path folder;

	private static Delivery delivery(String day, String due) {
		return new Delivery(1, "Tags", Optional.ofNullable(due).map(LocalDate::parse), Instant.parse(day + "T10:00:00Z"));
	}

	/** ISO 8601: the first week is that with the year's first Thursday, and 2026 has 53 weeks. */
	@Test
	void weeksAreThoseOfIso8601() {
		Report report = OnTimeTable.byWeek(List.of(delivery("2027-01-01", "2027-01-01"), delivery("2026-12-28", "2026-12-26"),
				delivery("2027-01-04", null), delivery("2026-11-30", "2026-12-24")), CLOCK);
		assertEquals(List.of("2026-W49", "2026-W53", "2027-W01"), report.rows().stream().map(Report.Row::name).toList());
		Report.Row last = report.rows().get(1);
		assertEquals(50, last.values().get(0).getAsDouble());
		assertEquals(2, last.values().get(4).getAsDouble(), "days late");
		assertEquals(OptionalDouble.empty(), report.rows().get(2).values().get(0), "nobody asked for a day");
		assertEquals("Week,In time (%),Delivered (jobs),With a day (jobs),By that day (jobs),Mean delay of the late (days)\r\n"
				+ "2026-W49,100,1,1,1,\r\n2026-W53,50,2,2,1,2.0\r\n2027-W01,,1,0,0,\r\n", report.toCsv());
	}

	@Test
	void allReportsCanBeReadOfAnEmptyStudio() throws Exception {
		StudioFolder studio = new StudioFolder(folder.resolve("studio"));
		for (ReportSource source : ReportSources.all()) {
			Report report = source.read(studio, CLOCK);
			assertEquals(source.title(), report.title());
			assertEquals(LocalDate.of(2027, 1, 8), report.day());
			assertEquals(source.title(), ReportSources.of(source.word()).orElseThrow().title());
		}
		assertEquals(ReportSources.all().size(), ReportSources.all().stream().map(ReportSource::word).distinct().count());
		assertTrue(ReportSources.of("weather").isEmpty());
	}

	@Test
	void rowsHaveAValueForEachColumn() {
		List<Report.Column> columns = List.of(new Report.Column("In time", "%", 0, true));
		assertThrows(IllegalArgumentException.class,
				() -> new Report("t", LocalDate.EPOCH, "h", columns, List.of(new Report.Row("a", List.of())), false, 0));
		assertThrows(IllegalArgumentException.class, () -> new Report("t", LocalDate.EPOCH, "h", List.of(), List.of(), false, 0));
	}
}
