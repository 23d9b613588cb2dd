package org.frisket.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;

import org.frisket.material.advice.Advice;
import org.frisket.material.advice.Caution;
import org.frisket.material.advice.RulesOfThumb;
import org.frisket.material.advice.SettingsAdvisor;
import org.frisket.material.advice.Work;
import org.frisket.material.tools.Machine;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Settings to begin with, and why. */
@Command(name = "advise", description = "Advises settings for a stock and says how sure that is, and why.", sortOptions = false)
final class SettingsAdviseVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Mixin
	private WorkOptions options;

	@Option(names = "--rule", paramLabel = "NAME=VALUE", description = "A rule of thumb to use instead of the studio's: exposure-over, one-pass-to, two-passes-to, start-pressure, start-speed or bulk.")
	private Map<String, String> rules = Map.of();

	@Option(names = "--json", description = "Writes JSON for machines; lengths in mm.")
	private boolean json;

	@Mixin
	private StudioOption studio = new StudioOption();

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	private record Answer(Advice advice, Machine machine) {
	}

	@Override
	public Integer call() throws Refusal {
		studio.choose();
		Answer answer = SettingsDesk.read(settings -> {
			Map<String, String> texts = new LinkedHashMap<>(settings.rules());
			texts.putAll(rules);
			Machine machine = options.machine(settings);
			Work work = new Work(options.stock(), machine, options.tool(settings), options.operation());
			return new Answer(new SettingsAdvisor(settings.trials(), RulesOfThumb.of(texts)).advise(work), machine);
		});
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			out.println(SettingsText.JSON.toJson(json(answer.advice())));
		} else {
			out.println(SettingsText.line(answer.advice().settings(), answer.machine()));
			out.println("confidence: " + answer.advice().confidence().text());
			answer.advice().reasons().forEach(reason -> out.println("  " + reason));
			answer.advice().cautions()
					.forEach(caution -> out.println((caution.isBlocking() ? "blocking: " : "caution: ") + caution.text()));
		}
		return answer.advice().cautions().stream().anyMatch(Caution::isBlocking) ? Frisket.BLOCKED : Frisket.DONE;
	}

	private static JsonObject json(Advice advice) {
		JsonObject root = new JsonObject();
		root.add("settings", SettingsText.json(advice.settings()));
		root.addProperty("confidence", advice.confidence().word());
		root.addProperty("trials", advice.trials());
		root.addProperty("outside", advice.outside());
		Advice.PressureWindow window = advice.window();
		JsonObject pressures = new JsonObject();
		if (window != null) {
			pressures.addProperty("from", window.from());
			pressures.addProperty("fromLeast", finite(window.fromLeast()));
			pressures.addProperty("fromMost", finite(window.fromMost()));
			pressures.addProperty("to", window.to());
			pressures.addProperty("toLeast", finite(window.toLeast()));
			pressures.addProperty("toMost", finite(window.toMost()));
		}
		root.add("window", window == null ? null : pressures);
		JsonArray reasons = new JsonArray();
		advice.reasons().forEach(reasons::add);
		root.add("reasons", reasons);
		JsonArray cautions = new JsonArray();
		for (Caution caution : advice.cautions()) {
			JsonObject object = new JsonObject();
			object.addProperty("id", caution.id());
			object.addProperty("blocking", caution.isBlocking());
			object.addProperty("text", caution.text());
			cautions.add(object);
		}
		root.add("cautions", cautions);
		return root;
	}

	/** JSON has no infinity: what the trials do not bound is null. */
	private static Double finite(double value) {
		return Double.isFinite(value) ? value : null;
	}
}
