package org.frisket.orders.paper.report;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

import org.frisket.orders.paper.Days;
import org.frisket.orders.paper.PaperForm;
import org.frisket.orders.paper.Titles;
import org.frisket.orders.reports.Report;
import org.frisket.page.bars.BarBlock;
import org.frisket.page.flow.Column;
import org.frisket.page.flow.Figures;
import org.frisket.page.flow.FlowedPages;
import org.frisket.prepare.layout.PageSetup;

/** A report on paper: its chart, and the table that it is drawn from. */
public final class ReportPaper {

	private static final double NAMES = 0.2;

	private ReportPaper() {
	}

	/** As PDF; the same report makes the same bytes. */
	public static void write(Report report, PaperForm form, OutputStream out) throws IOException {
		FlowedPages pages = new FlowedPages(new PageSetup(form.paper(), false, true), Titles.joined(report.title(), Days.brief(report.day())));
		Column column = pages.column();
		column.add(BarBlock.of(ReportChart.of(report), column));
		column.heading(Messages.ReportPaper_table);
		double[] shares = new double[report.columns().size() + 1];
		Arrays.fill(shares, (1 - NAMES) / report.columns().size());
		shares[0] = NAMES;
		List<String> headers = new ArrayList<>(List.of(report.heading()));
		report.columns().forEach(each -> headers.add(each.heading()));
		column.row(headers, shares, Column.DARK);
		for (Report.Row row : report.rows()) {
			List<String> cells = new ArrayList<>(List.of(row.name()));
			for (int i = 0; i < report.columns().size(); i++) {
				cells.add(text(row.values().get(i), report.columns().get(i)));
			}
			column.row(cells, shares, Column.BLACK);
		}
		pages.write(column, report.toCsv(), out);
	}

	private static String text(OptionalDouble value, Report.Column column) {
		return value.isPresent() ? Figures.number(value.getAsDouble(), column.decimals()) : "\u2013";
	}
}
