package org.frisket.cli.runs;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.frisket.cli.line.Json;
import org.frisket.cli.work.FindingsJson;
import org.frisket.cli.work.SettingsJson;
import org.frisket.material.Price;
import org.frisket.prepare.Finding;
import org.frisket.run.LegWork;
import org.frisket.run.MachineRun;
import org.frisket.run.RunCost;
import org.frisket.toolpath.Leg;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** Runs for machines: lengths of lines in metres, of all else in mm, times in seconds; what is not known is null. */
final class RunJson {


	private RunJson() {
	}

	static String text(List<SheetRun> runs, List<Finding> makeready, List<String> problems) {
		JsonObject root = new JsonObject();
		JsonArray sheets = new JsonArray();
		runs.forEach(run -> sheets.add(sheet(run)));
		root.add("sheets", sheets);
		root.add("findings", FindingsJson.of(makeready));
		root.add("problems", SettingsJson.sentences(problems));
		return Json.text(root);
	}

	private static JsonObject sheet(SheetRun run) {
		JsonObject object = new JsonObject();
		object.addProperty("sheet", run.number() == 0 ? null : run.number());
		object.addProperty("stock", run.load().sheet().map(sheet -> sheet.getStock()).orElse(null));
		object.addProperty("width", run.load().page().width());
		object.addProperty("height", run.load().page().height());
		object.addProperty("machine", run.run().machine().id());
		JsonArray legs = new JsonArray();
		for (int i = 0; i < run.run().work().size(); i++) {
			legs.add(leg(run.run(), i));
		}
		object.add("legs", legs);
		RunCost.Seconds all = run.cost().seconds();
		JsonObject seconds = new JsonObject();
		seconds.addProperty("all", all.all());
		seconds.addProperty("strokes", all.strokes());
		seconds.addProperty("travel", all.travel());
		seconds.addProperty("lifts", all.lifts());
		seconds.addProperty("stops", all.stops());
		object.add("seconds", seconds);
		object.addProperty("travelMetres", run.travel());
		object.addProperty("stops", run.stops());
		object.add("tools", tools(run.cost()));
		object.add("cost", cost(run.cost()));
		object.add("cautions", SettingsJson.cautions(run.cautions()));
		object.add("findings", FindingsJson.of(run.findings()));
		return object;
	}

	private static JsonObject leg(MachineRun run, int number) {
		Leg leg = run.run().legs().get(number);
		LegWork work = run.work().get(number);
		JsonObject object = new JsonObject();
		object.addProperty("stage", leg.stage().name().toLowerCase(Locale.ROOT).replace('_', '-'));
		object.addProperty("tool", work.tool().id());
		object.addProperty("basis", work.basis().name().toLowerCase(Locale.ROOT));
		object.add("settings", SettingsJson.of(work.settings()));
		object.add("reasons", SettingsJson.sentences(work.reasons()));
		object.addProperty("strokes", leg.strokes().size());
		object.addProperty("metres", run.metres(number));
		return object;
	}

	private static JsonArray tools(RunCost cost) {
		JsonArray tools = new JsonArray();
		for (RunCost.ToolUse use : cost.tools()) {
			JsonObject object = new JsonObject();
			object.addProperty("tool", use.tool().id());
			object.addProperty("metres", use.metres());
			object.addProperty("worn", use.edge().map(edge -> edge.wornMetres()).orElse(null));
			object.addProperty("dullAfter", use.edge().map(edge -> edge.dullAfter()).orElse(null));
			tools.add(object);
		}
		return tools;
	}

	private static JsonObject cost(RunCost cost) {
		JsonObject object = new JsonObject();
		object.add("material", price(cost.material()));
		object.add("time", price(cost.time()));
		object.add("total", price(cost.total()));
		JsonArray shares = new JsonArray();
		for (RunCost.Share share : cost.shares()) {
			JsonObject each = new JsonObject();
			each.addProperty("job", share.job());
			each.addProperty("name", share.name());
			each.addProperty("area", share.area());
			each.addProperty("seconds", share.seconds());
			each.add("material", price(share.material()));
			each.add("time", price(share.time()));
			each.add("total", price(share.total()));
			shares.add(each);
		}
		object.add("shares", shares);
		return object;
	}

	/** The amount as it is written, so that no digit is lost. */
	private static JsonObject price(Optional<Price> price) {
		if (price.isEmpty()) {
			return null;
		}
		JsonObject object = new JsonObject();
		String text = RunCost.text(price.get());
		object.addProperty("amount", text.substring(0, text.indexOf(' ')));
		object.addProperty("currency", price.get().currency().getCurrencyCode());
		return object;
	}
}
