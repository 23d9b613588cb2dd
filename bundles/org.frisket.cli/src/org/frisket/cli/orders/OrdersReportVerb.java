package org.frisket.cli.orders;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.model.WholeFile;
import org.frisket.orders.paper.PaperForm;
import org.frisket.orders.paper.report.ReportPaper;
import org.frisket.orders.reports.OnTimeReport;
import org.frisket.orders.reports.Report;
import org.frisket.orders.reports.ReportSource;
import org.frisket.orders.reports.Reports;
import org.frisket.orders.reports.StageReport;
import org.frisket.orders.work.RunBook;
import org.frisket.orders.work.RunReports;
import org.frisket.orders.work.StudioReports;
import org.frisket.prepare.layout.Paper;

import com.google.gson.Gson;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** What all jobs together come to. */
@Command(name = "report", description = "Reports on all jobs: how many stand at each stage and for how long, how many were delivered in time, how long runs took, how stock was used.", sortOptions = false)
final class OrdersReportVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(paramLabel = "REPORT", description = "stages, on-time, or another of: ${COMPLETION-CANDIDATES}.", completionCandidates = Words.class)
	private String what;

	@Option(names = "--csv", description = "Writes a table of comma-separated values.")
	private boolean csv;

	@Option(names = "--out", paramLabel = "FILE.pdf", description = "Writes the report with its chart as PDF instead.")
	private Path out;

	@Option(names = "--paper", paramLabel = "PAPER", defaultValue = "A4", description = "A4 or Letter (default ${DEFAULT-VALUE}).")
	private Paper paper;

	/** What reports are called. */
	static final class Words implements Iterable<String> {

		@Override
		public Iterator<String> iterator() {
			return StudioReports.all().stream().map(ReportSource::word).iterator();
		}
	}

	@Override
	public Integer call() throws Refusal {
		return orders.desk(studio -> {
			ReportSource source = StudioReports.of(what).orElseThrow(() -> new Refusal("there is no report “" + what
					+ "”; there are " + StudioReports.all().stream().map(ReportSource::word).collect(Collectors.joining(", "))));
			Reports reports = new Reports(studio);
			if (out != null) {
				write(source.read(studio, Clock.systemDefaultZone()));
				return Status.DONE;
			}
			switch (what) {
			case "stages" -> print(reports.stages());
			case "on-time" -> print(reports.onTime());
			case "run-time", "stock-use" -> new RunReportText(orders, csv)
					.print(RunReports.of(new RunBook(studio).all(), ZoneId.systemDefault()), what.equals("run-time"));
			default -> print(source.read(studio, Clock.systemDefaultZone()));
			}
			return Status.DONE;
		});
	}

	private void write(Report report) throws Refusal {
		if (!out.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
			throw new Refusal("--out: reports are .pdf files, not “" + out + "”");
		}
		try {
			WholeFile.write(to -> ReportPaper.write(report, new PaperForm(paper, false, ZoneId.systemDefault()), to), out);
		} catch (IOException e) {
			throw new Refusal("--out: " + WholeFile.reason(e));
		}
	}

	/** Any report: a line a row, with what is known of it. */
	private void print(Report report) {
		if (csv) {
			table(report.toCsv());
			return;
		}
		JsonArray rows = new JsonArray();
		for (Report.Row row : report.rows()) {
			JsonObject object = new JsonObject();
			List<String> words = new ArrayList<>();
			object.addProperty("name", row.name());
			JsonArray values = new JsonArray();
			for (int i = 0; i < report.columns().size(); i++) {
				Report.Column column = report.columns().get(i);
				OptionalDouble value = row.values().get(i);
				values.add(value(value));
				if (value.isPresent()) {
					words.add(column.title() + ": " + String.format(Locale.ROOT, "%." + column.decimals() + "f", value.getAsDouble())
							+ (column.unit().isEmpty() ? "" : ' ' + column.unit()));
				}
			}
			object.add("values", values);
			rows.add(object);
			if (!orders.isJson()) {
				orders.out().println(row.name() + "  " + String.join(", ", words));
			}
		}
		if (orders.isJson()) {
			JsonArray columns = new JsonArray();
			report.columns().forEach(column -> columns.add(column.heading()));
			JsonObject root = new JsonObject();
			root.addProperty("title", report.title());
			root.addProperty("day", report.day().toString());
			root.add("columns", columns);
			root.add("rows", rows);
			orders.out().println(root);
		}
	}

	private void print(StageReport report) {
		if (csv) {
			table(report.toCsv());
			return;
		}
		JsonArray rows = new JsonArray();
		for (StageReport.Row row : report.rows()) {
			JsonObject object = new JsonObject();
			object.addProperty("stage", OrderReport.word(row.stage()));
			object.addProperty("jobs", row.jobs());
			object.add("ages", new Gson().toJsonTree(row.ages()));
			object.addProperty("oldestDays", row.oldest());
			object.addProperty("late", row.late());
			rows.add(object);
			if (!orders.isJson() && row.jobs() > 0) {
				orders.out().printf("%-9s  jobs: %d, the oldest there for %d days, late: %d%n", OrderReport.word(row.stage()),
						row.jobs(), row.oldest(), row.late());
			}
		}
		json("stages", rows);
	}

	private void print(OnTimeReport report) {
		if (csv) {
			table(report.toCsv());
			return;
		}
		JsonArray rows = new JsonArray();
		for (OnTimeReport.Row row : report.rows()) {
			JsonObject object = new JsonObject();
			object.addProperty("month", row.month().toString());
			object.addProperty("delivered", row.delivered());
			object.addProperty("dated", row.dated());
			object.addProperty("onTime", row.onTime());
			object.addProperty("rate", value(row.rate()));
			object.addProperty("meanDaysLate", value(row.meanDaysLate()));
			rows.add(object);
			if (!orders.isJson()) {
				orders.out().println(row.month() + "  delivered: " + row.delivered() + ", with a day: " + row.dated()
						+ ", in time: " + row.onTime() + (row.rate().isPresent()
								? String.format(Locale.ROOT, " (%.0f %%)", 100 * row.rate().getAsDouble())
								: ""));
			}
		}
		json("months", rows);
	}

	private static Double value(OptionalDouble value) {
		return value.isPresent() ? value.getAsDouble() : null;
	}

	private void json(String name, JsonArray rows) {
		if (orders.isJson()) {
			JsonObject root = new JsonObject();
			root.add(name, rows);
			orders.out().println(root);
		}
	}

	/** As it is, with the line ends that tables have; only whole lines are passed on without being asked. */
	private void table(String text) {
		orders.out().print(text);
		orders.out().flush();
	}
}
