package org.frisket.orders.reports;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TimeZone;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Days are days of the studio's calendar, and moments are moments, also where clocks are changed. The nights: Berlin, 28
 * March 2027 (an hour is missing) and 31 October 2027 (an hour comes twice); São Paulo, 4 November 2018 (there was no
 * midnight); by the rules of the IANA time zone database that the JDK brings.
 */
class CalendarTest extends BothDatabases {

	private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
	private static final ZoneId SAO_PAULO = ZoneId.of("America/Sao_Paulo");

	private static Instant berlin(String time) {
		return LocalDateTime.parse(time).atZone(BERLIN).toInstant();
	}

	private static Entry entry(Stage stage, Instant since, LocalDate due) {
		return new Entry("x", 1, 1, "Banner", "", stage, since, Optional.ofNullable(due), 1, "", "", since, "Ottoline");
	}

	private static StageReport.Row row(StageReport report, Stage stage) {
		return report.rows().stream().filter(each -> each.stage() == stage).findFirst().orElseThrow();
	}

	@Test
	void agesAreDaysOfTheCalendar() {
		// 23 hours later, and it is the next day all the same; 25 hours later, and it is no more than that
		assertEquals(1, oldest(berlin("2027-03-27T12:00"), berlin("2027-03-28T12:00")));
		assertEquals(1, oldest(berlin("2027-10-30T12:00"), berlin("2027-10-31T12:00")));
		assertEquals(0, oldest(berlin("2027-10-31T00:00"), berlin("2027-10-31T23:59")));
		assertEquals(1, oldest(berlin("2027-03-27T23:59"), berlin("2027-03-28T00:00")));
		// a desk whose clock is ahead
		assertEquals(0, oldest(berlin("2027-03-29T12:00"), berlin("2027-03-28T12:00")));
	}

	private static long oldest(Instant since, Instant now) {
		return row(StageReport.of(List.of(entry(Stage.ORDERED, since, null)), now, BERLIN), Stage.ORDERED).oldest();
	}

	@Test
	void everyJobIsCountedOnceByStageAndAge() {
		Instant now = berlin("2027-06-30T12:00");
		List<Entry> entries = List.of(0, 1, 2, 7, 8, 14, 15, 30, 31, 400).stream()
				.map(days -> entry(Stage.DESIGNED, now.atZone(BERLIN).minusDays(days).toInstant(),
						LocalDate.of(2027, 6, 30).minusDays(days % 2)))
				.toList();
		StageReport report = StageReport.of(entries, now, BERLIN);
		assertEquals(new StageReport.Row(Stage.DESIGNED, 10, List.of(2, 2, 2, 2, 2), 400, 4), row(report, Stage.DESIGNED));
		assertEquals(0, row(report, Stage.ORDERED).jobs());
		List<String> csv = report.toCsv().lines().toList();
		assertEquals("stage,jobs,up to 1 day,2 to 7 days,8 to 14 days,15 to 30 days,over 30 days,oldest days,late", csv.get(0));
		assertEquals("designed,10,2,2,2,2,2,400,4", csv.get(3));
	}

	@Test
	void whatIsDeliveredOnItsDayIsInTimeToTheLastMinute() {
		LocalDate due = LocalDate.of(2027, 10, 31);
		Delivery inTime = new Delivery(1, "a", Optional.of(due), berlin("2027-10-31T23:59:59"));
		Delivery late = new Delivery(2, "b", Optional.of(due), berlin("2027-11-03T00:00"));
		Delivery open = new Delivery(3, "c", Optional.empty(), berlin("2027-11-03T00:00"));
		assertEquals(Optional.of(0L), inTime.daysLate(BERLIN));
		// the same moment is the next day further east
		assertEquals(Optional.of(1L), inTime.daysLate(ZoneId.of("Asia/Tokyo")));
		OnTimeReport report = OnTimeReport.of(List.of(inTime, late, open), BERLIN);
		assertEquals(List.of(new OnTimeReport.Row(YearMonth.of(2027, 10), 1, 1, 1, 0),
				new OnTimeReport.Row(YearMonth.of(2027, 11), 2, 1, 0, 3)), report.rows());
		assertEquals(OptionalDouble.of(1), report.rows().get(0).rate());
		assertEquals(OptionalDouble.of(3), report.rows().get(1).meanDaysLate());
		assertEquals(List.of("2027-10,1,1,1,1.000,", "2027-11,2,1,0,0.000,3.0"), report.toCsv().lines().skip(1).toList());
		assertEquals(OptionalDouble.empty(), OnTimeReport.of(List.of(open), BERLIN).rows().get(0).rate());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void daysAndMomentsComeBackAsTheyWere(boolean shared) throws Exception {
		TimeZone before = TimeZone.getDefault();
		try {
			for (ZoneId zone : List.of(SAO_PAULO, BERLIN, ZoneId.of("Pacific/Kiritimati"), ZoneOffset.UTC)) {
				TimeZone.setDefault(TimeZone.getTimeZone(zone));
				kept(shared, LocalDate.of(2018, 11, 4), Instant.parse("2018-11-04T03:00:00Z"));
				// in Berlin the two are the same time of day
				kept(shared, LocalDate.of(2027, 3, 28), Instant.parse("2027-10-31T00:30:00.123456Z"));
				kept(shared, LocalDate.of(2027, 10, 31), Instant.parse("2027-10-31T01:30:00.123456Z"));
			}
		} finally {
			TimeZone.setDefault(before);
		}
	}

	private void kept(boolean shared, LocalDate due, Instant at) throws Exception {
		OrderBook book = new OrderBook(studio(shared), Clock.fixed(at, ZoneOffset.UTC));
		long number = book.add(new NewOrder("Banner", "", Optional.of(due), 1, ""), "Ottoline").number();
		book.stage(number, Stage.ORDERED, "Ottoline", "");
		Entry entry = book.find(number);
		assertEquals(Optional.of(due), entry.due());
		assertEquals(at, entry.since());
		assertEquals(at, book.history(number).get(0).getAt());
		assertEquals(due, book.open(number).job().getDue());
	}
}
