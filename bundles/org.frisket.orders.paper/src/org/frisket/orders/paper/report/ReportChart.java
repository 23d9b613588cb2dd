package org.frisket.orders.paper.report;

import java.util.List;
import java.util.stream.IntStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.orders.paper.Days;
import org.frisket.orders.paper.Titles;
import org.frisket.orders.reports.Report;
import org.frisket.page.bars.BarChart;

/** A report as a chart of bars. */
public final class ReportChart {

	/** More rows than these are not told apart on a page; the last ones are shown. */
	private static final int MOST = 30;

	private ReportChart() {
	}

	/** The columns of the first unit that is drawn; a scale has one unit. */
	public static BarChart of(Report report) {
		String unit = report.columns().stream().filter(Report.Column::drawn).findFirst().orElseThrow().unit();
		int[] drawn = IntStream.range(0, report.columns().size())
				.filter(i -> report.columns().get(i).drawn() && report.columns().get(i).unit().equals(unit)).toArray();
		List<Report.Row> rows = report.rows().subList(Math.max(0, report.rows().size() - MOST), report.rows().size());
		String day = NLS.bind(Messages.ReportChart_day, Days.brief(report.day()));
		String foot = rows.isEmpty() ? Titles.joined(day, Messages.ReportChart_nothing)
				: rows.size() == report.rows().size() ? day
						: Titles.joined(day, NLS.bind(Messages.ReportChart_last, rows.size(), report.rows().size()));
		return new BarChart(report.title(), foot, unit,
				IntStream.of(drawn).mapToObj(i -> report.columns().get(i).title()).toList(),
				rows.stream().map(row -> new BarChart.Bar(row.name(),
						IntStream.of(drawn).mapToObj(i -> row.values().get(i)).toList())).toList(),
				report.stacked(), IntStream.of(drawn).map(i -> report.columns().get(i).decimals()).max().orElse(0),
				report.least());
	}
}
