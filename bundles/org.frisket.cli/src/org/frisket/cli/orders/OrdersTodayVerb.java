package org.frisket.cli.orders;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.work.RunCautions;
import org.frisket.orders.work.Today;
import org.frisket.orders.work.TodayLine;
import org.frisket.orders.work.TodayList;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** What is to be done. */
@Command(name = "today", description = "Says what is to be printed, cut and finished, by stock and by day, and which runs are under way.", sortOptions = false)
final class OrdersTodayVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Option(names = "--day", paramLabel = "DAY", description = "Which day it is, such as 2027-03-01 (default today).")
	private LocalDate day;

	@Override
	public Integer call() throws Refusal {
		LocalDate now = day == null ? LocalDate.now() : day;
		return orders.desk(studio -> {
			Today today = new TodayList(studio).read(now);
			Set<String> stocks = new TreeSet<>();
			today.cut().forEach(group -> stocks.add(group.of().stock()));
			List<String> cautions = today.cut().isEmpty() && today.runs().isEmpty() ? List.of()
					: RunCautions.of(studio, stocks);
			if (orders.isJson()) {
				orders.out().println(json(today, cautions));
			} else {
				print(today, cautions);
			}
			return Status.DONE;
		});
	}

	private void print(Today today, List<String> cautions) {
		if (today.isEmpty()) {
			orders.out().println("nothing is to be printed, cut or finished");
		}
		today.runs().forEach(run -> orders.out().println(RunText.line(run)));
		print("print", today.print(), today);
		print("cut", today.cut(), today);
		if (!today.finish().isEmpty()) {
			orders.out().println("finish");
			today.finish().forEach(line -> orders.out().println(OrderReport.line(line.entry(), today.day())));
		}
		today.problems().forEach(problem -> orders.out().println("caution: " + problem));
		cautions.forEach(caution -> orders.out().println("caution: " + caution));
	}

	private void print(String what, List<Today.Group> groups, Today today) {
		for (Today.Group group : groups) {
			orders.out().println(what + " " + RunText.name(group.of()) + ", pieces missing: " + group.missing());
			for (TodayLine line : group.lines()) {
				orders.out().println(OrderReport.line(line.entry(), today.day()) + ", missing " + line.missing()
						+ (line.coming() > 0 ? ", on runs " + line.coming() : ""));
			}
		}
	}

	private static JsonObject json(Today today, List<String> cautions) {
		JsonObject json = new JsonObject();
		json.addProperty("day", today.day().toString());
		json.add("print", groups(today.print(), today));
		json.add("cut", groups(today.cut(), today));
		JsonArray finish = new JsonArray();
		today.finish().forEach(line -> finish.add(OrderReport.object(line.entry(), today.day())));
		json.add("finish", finish);
		JsonArray runs = new JsonArray();
		today.runs().forEach(run -> runs.add(RunText.json(run)));
		json.add("runs", runs);
		json.add("problems", RunText.strings(today.problems()));
		json.add("cautions", RunText.strings(cautions));
		return json;
	}

	private static JsonArray groups(List<Today.Group> groups, Today today) {
		JsonArray all = new JsonArray();
		for (Today.Group group : groups) {
			JsonObject json = new JsonObject();
			RunText.add(json, group.of());
			json.addProperty("missing", group.missing());
			JsonArray lines = new JsonArray();
			for (TodayLine line : group.lines()) {
				JsonObject one = OrderReport.object(line.entry(), today.day());
				one.addProperty("made", line.made());
				one.addProperty("missing", line.missing());
				one.addProperty("onRuns", line.coming());
				lines.add(one);
			}
			json.add("jobs", lines);
			all.add(json);
		}
		return all;
	}
}
