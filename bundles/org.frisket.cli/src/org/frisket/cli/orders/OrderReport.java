package org.frisket.cli.orders;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.model.Stage;
import org.frisket.model.StageChange;
import org.frisket.orders.Entry;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/** Jobs in words and as JSON. */
record OrderReport(PrintWriter out, boolean json) {

	/** What a stage is called on the command line, such as {@code on-hold}. */
	static String word(Stage stage) {
		return stage.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	static Stage stage(String word) throws Refusal {
		return Arrays.stream(Stage.values()).filter(stage -> word(stage).equals(word.toLowerCase(Locale.ROOT))).findFirst()
				.orElseThrow(() -> new Refusal("“" + word + "” is no stage; there are "
						+ Arrays.stream(Stage.values()).map(OrderReport::word).collect(Collectors.joining(", "))));
	}

	void list(List<Entry> entries, LocalDate today) {
		if (json) {
			JsonArray jobs = new JsonArray();
			entries.forEach(entry -> jobs.add(object(entry, today)));
			JsonObject root = new JsonObject();
			root.add("jobs", jobs);
			print(root);
			return;
		}
		if (entries.isEmpty()) {
			out.println("there are no such jobs");
		}
		entries.forEach(entry -> out.println(line(entry, today)));
	}

	static String line(Entry entry, LocalDate today) {
		return "%6d  %-9s  %s  %4d × %s%s".formatted(entry.number(), word(entry.stage()),
				entry.due().map(LocalDate::toString).orElse("          "), entry.quantity(), entry.title(),
				(entry.customer().isEmpty() ? "" : ", for " + entry.customer()) + (entry.isLate(today) ? " (late)" : ""));
	}

	void one(Entry entry, List<StageChange> history, LocalDate today) {
		one(entry, history, List.of(), List.of(), today);
	}

	/** @param originals that it is a repeat of, the latest first @param repeats of it, the latest number first */
	void one(Entry entry, List<StageChange> history, List<Entry> originals, List<Entry> repeats, LocalDate today) {
		if (json) {
			JsonObject object = object(entry, today);
			object.add("repeats", numbers(originals));
			object.add("repeatedBy", numbers(repeats));
			JsonArray changes = new JsonArray();
			history.forEach(change -> changes.add(object(change)));
			object.add("history", changes);
			print(object);
			return;
		}
		out.println(line(entry, today));
		if (!entry.stock().isEmpty()) {
			out.println("stock: " + entry.stock());
		}
		out.printf("changed %s by %s, revision %d%n", entry.changed(), entry.changedBy(), entry.revision());
		if (!originals.isEmpty()) {
			out.println("repeat of " + joined(originals));
		}
		if (!repeats.isEmpty()) {
			out.println("repeated by " + joined(repeats));
		}
		history.forEach(change -> out.printf("%s  %s: %s to %s%s%n", change.getAt(), change.getWho(), word(change.getFrom()),
				word(change.getTo()), change.getRemark() == null ? "" : ", " + change.getRemark()));
	}

	private static JsonArray numbers(List<Entry> entries) {
		JsonArray numbers = new JsonArray();
		entries.forEach(entry -> numbers.add(entry.number()));
		return numbers;
	}

	private static String joined(List<Entry> entries) {
		return entries.stream().map(entry -> Long.toString(entry.number())).collect(Collectors.joining(", "));
	}

	static JsonObject object(Entry entry, LocalDate today) {
		JsonObject object = new JsonObject();
		object.addProperty("number", entry.number());
		object.addProperty("id", entry.id());
		object.addProperty("title", entry.title());
		object.addProperty("customer", entry.customer());
		object.addProperty("stage", word(entry.stage()));
		object.addProperty("since", entry.since().toString());
		object.addProperty("due", entry.due().map(LocalDate::toString).orElse(null));
		object.addProperty("late", entry.isLate(today));
		object.addProperty("quantity", entry.quantity());
		object.addProperty("stock", entry.stock());
		object.addProperty("revision", entry.revision());
		object.addProperty("changed", entry.changed().toString());
		object.addProperty("changedBy", entry.changedBy());
		return object;
	}

	private static JsonObject object(StageChange change) {
		JsonObject object = new JsonObject();
		object.addProperty("at", change.getAt().toString());
		object.addProperty("who", change.getWho());
		object.addProperty("from", word(change.getFrom()));
		object.addProperty("to", word(change.getTo()));
		object.addProperty("remark", change.getRemark());
		return object;
	}

	private void print(JsonElement element) {
		out.println(Json.text(element));
	}
}
