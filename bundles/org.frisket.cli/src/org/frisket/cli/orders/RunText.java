package org.frisket.cli.orders;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.frisket.orders.work.PlannedRun;
import org.frisket.orders.work.RunPiece;
import org.frisket.orders.work.RunSheet;
import org.frisket.orders.work.RunTime;
import org.frisket.orders.work.StockColour;
import org.frisket.orders.work.Step;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** Runs in words and as JSON. */
final class RunText {

	private RunText() {
	}

	static String name(StockColour of) {
		return of.toString().isEmpty() ? "no stock" : of.toString();
	}

	static String line(PlannedRun run) {
		return "run %d  %s%s  jobs %s, %s, about %s".formatted(run.number(), run.state().name().toLowerCase(Locale.ROOT),
				run.next().map(step -> ", to be " + (step == Step.PRINT ? "printed" : "cut")).orElse(""),
				run.numbers().stream().map(String::valueOf).collect(Collectors.joining(", ")),
				run.sheets().size() + (run.sheets().size() == 1 ? " sheet" : " sheets"), RunTime.text(run.seconds()));
	}

	static JsonObject json(PlannedRun run) {
		JsonObject json = new JsonObject();
		json.addProperty("run", run.number());
		json.addProperty("job", run.job());
		json.addProperty("title", run.title());
		json.addProperty("state", run.state().name().toLowerCase(Locale.ROOT));
		json.addProperty("next", run.next().map(step -> step.name().toLowerCase(Locale.ROOT)).orElse(null));
		json.addProperty("plannedAt", run.at().toString());
		json.addProperty("plannedBy", run.by());
		json.addProperty("estimatedSeconds", plain(run.seconds()));
		json.addProperty("measuredSeconds", run.measured().map(RunText::plain).orElse(null));
		JsonArray pieces = new JsonArray();
		for (RunPiece piece : run.pieces()) {
			JsonObject one = new JsonObject();
			one.addProperty("number", piece.number());
			one.addProperty("title", piece.title());
			add(one, piece.of());
			one.addProperty("pieces", piece.pieces());
			one.addProperty("printed", piece.printed());
			one.addProperty("cut", piece.cut());
			one.addProperty("spoiled", piece.spoiled());
			pieces.add(one);
		}
		json.add("pieces", pieces);
		JsonArray sheets = new JsonArray();
		for (RunSheet sheet : run.sheets()) {
			JsonObject one = new JsonObject();
			add(one, sheet.of());
			one.addProperty("leftover", sheet.isLeftover() ? sheet.leftover() : null);
			one.addProperty("amount", plain(sheet.amount()));
			one.addProperty("width", plain(sheet.width()));
			one.addProperty("height", plain(sheet.height()));
			sheets.add(one);
		}
		json.add("sheets", sheets);
		JsonArray used = new JsonArray();
		run.used().forEach((of, amount) -> {
			JsonObject one = new JsonObject();
			add(one, of);
			one.addProperty("amount", plain(amount));
			used.add(one);
		});
		json.add("used", used);
		return json;
	}

	/** As many digits as it has, so that it is the same for machines whatever was asked. */
	static BigDecimal plain(BigDecimal value) {
		return new BigDecimal(value.stripTrailingZeros().toPlainString());
	}

	static void add(JsonObject json, StockColour of) {
		json.addProperty("stock", of.stock().isEmpty() ? null : of.stock());
		json.addProperty("colour", of.colour().isEmpty() ? null : of.colour());
	}

	static JsonArray strings(List<String> strings) {
		JsonArray all = new JsonArray();
		strings.forEach(all::add);
		return all;
	}
}
