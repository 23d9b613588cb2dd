package org.frisket.cli.orders;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.reports.OnTimeReport;
import org.frisket.orders.reports.Reports;
import org.frisket.orders.reports.StageReport;

import com.google.gson.Gson;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** What all jobs together come to. */
@Command(name = "report", description = "Reports on all jobs: how many stand at each stage and for how long, or how many were delivered in time.", sortOptions = false)
final class OrdersReportVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(paramLabel = "stages|on-time", description = "Of what.")
	private String what;

	@Option(names = "--csv", description = "Writes a table of comma-separated values.")
	private boolean csv;

	@Override
	public Integer call() throws Refusal {
		return orders.desk(studio -> {
			Reports reports = new Reports(studio);
			switch (what) {
			case "stages" -> print(reports.stages());
			case "on-time" -> print(reports.onTime());
			default -> throw new Refusal("there is no report “" + what + "”; there are stages and on-time");
			}
			return Status.DONE;
		});
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
