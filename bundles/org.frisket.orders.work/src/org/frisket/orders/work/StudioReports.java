package org.frisket.orders.work;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.osgi.util.NLS;
import org.frisket.orders.OrderException;
import org.frisket.orders.reports.Report;
import org.frisket.orders.reports.ReportSource;
import org.frisket.orders.reports.ReportSources;
import org.frisket.studio.StudioFolder;

/** All reports of a studio: those of its jobs, and those of its runs. */
public final class StudioReports {

	private static final BigDecimal SECONDS_PER_MINUTE = BigDecimal.valueOf(60);
	private static final double ALL = 100;
	private static final List<Report.Column> TIMES = List.of(
			new Report.Column(Messages.StudioReports_estimated, Messages.StudioReports_minutes, 1, true),
			new Report.Column(Messages.StudioReports_measured, Messages.StudioReports_minutes, 1, true),
			new Report.Column(Messages.StudioReports_ratio, "", 2, false));
	private static final List<Report.Column> USES = List.of(
			new Report.Column(Messages.StudioReports_utilisation, "%", 1, true),
			new Report.Column(Messages.StudioReports_spoiled, "%", 1, true),
			new Report.Column(Messages.StudioReports_planned, "", 2, false),
			new Report.Column(Messages.StudioReports_used, "", 2, false),
			new Report.Column(Messages.StudioReports_leftovers, "", 0, false),
			new Report.Column(Messages.StudioReports_pieces, "", 0, false));

	private StudioReports() {
	}

	private interface Table {
		Report of(RunReports reports, LocalDate day);
	}

	private record Source(String word, String title, Table table) implements ReportSource {

		@Override
		public Report read(StudioFolder studio, Clock clock) throws IOException, OrderException {
			return table.of(RunReports.of(new RunBook(studio).all(), clock.getZone()), LocalDate.now(clock));
		}
	}

	/** In the order in which people are shown them. */
	public static List<ReportSource> all() {
		List<ReportSource> all = new ArrayList<>(ReportSources.all());
		all.add(new Source("run-time", Messages.StudioReports_times, StudioReports::times));
		all.add(new Source("stock-use", Messages.StudioReports_uses, StudioReports::uses));
		return all;
	}

	/** @param word on the command line */
	public static Optional<ReportSource> of(String word) {
		return all().stream().filter(source -> source.word().equals(word)).findFirst();
	}

	private static Report times(RunReports reports, LocalDate day) {
		List<Report.Row> rows = reports.times().stream()
				.map(time -> new Report.Row(NLS.bind(Messages.StudioReports_run, time.run(), time.day()),
						List.of(OptionalDouble.of(minutes(time.seconds())), number(time.measured().map(StudioReports::minutes)),
								number(time.ratio().map(BigDecimal::doubleValue)))))
				.toList();
		return new Report(Messages.StudioReports_times, day, Messages.StudioReports_runs, TIMES, rows, false, 0);
	}

	private static double minutes(BigDecimal seconds) {
		return seconds.doubleValue() / SECONDS_PER_MINUTE.doubleValue();
	}

	private static Report uses(RunReports reports, LocalDate day) {
		List<Report.Row> rows = reports.uses().stream().map(use -> new Report.Row(name(use.of()), List.of(
				number(use.utilisation().map(share -> ALL * share.doubleValue())),
				use.pieces() + use.spoiled() == 0 ? OptionalDouble.empty()
						: OptionalDouble.of(ALL * use.spoiled() / (use.pieces() + use.spoiled())),
				OptionalDouble.of(use.planned().doubleValue()), OptionalDouble.of(use.used().doubleValue()),
				OptionalDouble.of(use.leftovers()), OptionalDouble.of(use.pieces())))).toList();
		return new Report(Messages.StudioReports_uses, day, Messages.StudioReports_stocks, USES, rows, false, ALL);
	}

	private static String name(StockColour of) {
		if (of.stock().isEmpty()) {
			return of.colour().isEmpty() ? Messages.StudioReports_noStock : of.colour();
		}
		return of.colour().isEmpty() ? of.stock() : of.stock() + ' ' + of.colour();
	}

	private static OptionalDouble number(Optional<Double> value) {
		return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
	}
}
