package org.frisket.cli.orders;

import org.frisket.orders.work.RunReports;
import org.frisket.orders.work.RunTime;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** Reports on runs as lines, as a table, or as JSON. */
record RunReportText(OrdersVerb orders, boolean csv) {

	/** @param times how long they took; else how stock was used */
	void print(RunReports reports, boolean times) {
		if (csv) {
			// as it is, with the line ends that tables have
			orders.out().print(times ? reports.timesToCsv() : reports.usesToCsv());
			orders.out().flush();
		} else if (orders.isJson()) {
			JsonObject root = new JsonObject();
			root.add(times ? "runs" : "stocks", times ? times(reports) : uses(reports));
			orders.out().println(root);
		} else if (times) {
			reports.times().forEach(row -> orders.out().println("run " + row.run() + "  " + row.day() + "  thought "
					+ RunTime.text(row.seconds()) + row.measured().map(took -> ", took " + RunTime.text(took)).orElse("")));
		} else {
			reports.uses().forEach(row -> orders.out().println(RunText.name(row.of()) + "  used: " + RunText.plain(row.used())
					+ " of " + RunText.plain(row.planned()) + " planned, leftovers: " + row.leftovers() + ", pieces: " + row.pieces()
					+ ", spoiled: " + row.spoiled() + row.utilisation().map(share -> ", utilisation " + share).orElse("")));
		}
	}

	private static JsonArray times(RunReports reports) {
		JsonArray rows = new JsonArray();
		for (RunReports.Time row : reports.times()) {
			JsonObject object = new JsonObject();
			object.addProperty("run", row.run());
			object.addProperty("day", row.day().toString());
			JsonArray jobs = new JsonArray();
			row.jobs().forEach(jobs::add);
			object.add("jobs", jobs);
			object.addProperty("estimatedSeconds", RunText.plain(row.seconds()));
			object.addProperty("measuredSeconds", row.measured().map(RunText::plain).orElse(null));
			object.addProperty("ratio", row.ratio().orElse(null));
			rows.add(object);
		}
		return rows;
	}

	private static JsonArray uses(RunReports reports) {
		JsonArray rows = new JsonArray();
		for (RunReports.Use row : reports.uses()) {
			JsonObject object = new JsonObject();
			RunText.add(object, row.of());
			object.addProperty("runs", row.runs());
			object.addProperty("planned", RunText.plain(row.planned()));
			object.addProperty("used", RunText.plain(row.used()));
			object.addProperty("leftovers", row.leftovers());
			object.addProperty("sheetAreaMm2", RunText.plain(row.sheetArea()));
			object.addProperty("partsAreaMm2", RunText.plain(row.partsArea()));
			object.addProperty("utilisation", row.utilisation().orElse(null));
			object.addProperty("pieces", row.pieces());
			object.addProperty("spoiled", row.spoiled());
			rows.add(object);
		}
		return rows;
	}
}
