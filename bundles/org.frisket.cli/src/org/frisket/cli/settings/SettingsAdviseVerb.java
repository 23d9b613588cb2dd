package org.frisket.cli.settings;

import java.io.PrintWriter;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbOptions;
import org.frisket.cli.work.SettingsJson;
import org.frisket.material.advice.Advice;
import org.frisket.material.advice.Caution;
import org.frisket.material.advice.RulesOfThumb;
import org.frisket.material.advice.SettingsAdvisor;
import org.frisket.material.advice.Work;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.BladeWear;
import org.frisket.material.trials.Reorder;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.SettingsStore;

import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Settings to begin with, and why. */
@Command(name = "advise", description = "Advises settings for a stock and says how sure that is, and why.", sortOptions = false)
final class SettingsAdviseVerb implements Callable<Integer> {

	private static final String WEAR = "blade.wear";

	@Mixin
	private WorkOptions options;

	@Option(names = "--rule", paramLabel = "NAME=VALUE", description = "A rule of thumb to use instead of the studio's: exposure-over, one-pass-to, two-passes-to, start-pressure, start-speed or bulk.")
	private Map<String, String> rules = Map.of();

	@Option(names = "--job", paramLabel = "JOB", description = "The id of a job that is made again: what worked for it comes first.")
	private String job;

	@Option(names = "--length", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Of all lines that lie ahead, in one pass, such as 12500mm: says whether the blade lasts.")
	private Double length;

	@Option(names = "--json", description = "Writes JSON for machines; lengths in mm.")
	private boolean json;

	@Mixin
	private VerbOptions verb = new VerbOptions();

	/** @param before what worked before @param wear whether the edge lasts; empty if it does, or nobody asked */
	private record Answer(Advice advice, Machine machine, Optional<Reorder> before, Optional<String> wear) {

		/** What one begins with: what worked before, else what is advised. */
		Settings settings() {
			return before.map(reorder -> reorder.run().settings()).orElse(advice.settings());
		}
	}

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		options.stock();
		Answer answer = SettingsDesk.read(this::answer);
		if (json) {
			verb.out().println(Json.text(json(answer)));
		} else {
			print(answer, verb.out());
		}
		return answer.advice().cautions().stream().anyMatch(Caution::isBlocking) ? Status.BLOCKED : Status.DONE;
	}

	private Answer answer(SettingsStore settings) throws SQLException, Refusal {
		Map<String, String> texts = new LinkedHashMap<>(settings.rules());
		texts.putAll(rules);
		Machine machine = options.machine(settings);
		Tool tool = options.tool(settings);
		Work work = new Work(options.stock(), machine, tool, options.operation());
		Answer answer = new Answer(new SettingsAdvisor(settings.trials(), RulesOfThumb.of(texts)).advise(work), machine,
				job == null ? Optional.empty()
						: Reorder.of(settings.runs(), job, options.stock().stock(), options.setup(settings)),
				Optional.empty());
		return length == null ? answer : new Answer(answer.advice(), machine, answer.before(),
				BladeWear.warning(tool, length / 1000 * answer.settings().passes(), options.stock().abrasion()));
	}

	private static void print(Answer answer, PrintWriter out) {
		Advice advice = answer.advice();
		answer.before().ifPresent(reorder -> {
			out.println(SettingsText.line(reorder.run().settings(), answer.machine()));
			reorder.words().forEach(words -> out.println("  " + words));
			out.println("without that run:");
		});
		out.println(SettingsText.line(advice.settings(), answer.machine()));
		out.println("confidence: " + advice.confidence().text());
		advice.reasons().forEach(reason -> out.println("  " + reason));
		cautions(answer)
				.forEach(caution -> out.println((caution.isBlocking() ? "blocking: " : "caution: ") + caution.text()));
	}

	/** With the length ahead, more is known of the edge than without. */
	private static List<Caution> cautions(Answer answer) {
		if (answer.wear().isEmpty()) {
			return answer.advice().cautions();
		}
		List<Caution> cautions = new ArrayList<>(answer.advice().cautions());
		cautions.removeIf(caution -> caution.id().equals(WEAR));
		cautions.add(new Caution(WEAR, false, answer.wear().get()));
		return cautions;
	}

	private static JsonObject json(Answer answer) {
		JsonObject root = json(answer.advice(), cautions(answer));
		answer.before().ifPresent(reorder -> {
			JsonObject before = new JsonObject();
			before.addProperty("run", reorder.run().id());
			before.add("settings", SettingsJson.of(reorder.run().settings()));
			before.add("words", SettingsJson.sentences(reorder.words()));
			root.add("before", before);
		});
		return root;
	}

	private static JsonObject json(Advice advice, List<Caution> all) {
		JsonObject root = new JsonObject();
		root.add("settings", SettingsJson.of(advice.settings()));
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
		root.add("reasons", SettingsJson.sentences(advice.reasons()));
		root.add("cautions", SettingsJson.cautions(all));
		return root;
	}

	/** JSON has no infinity: what the trials do not bound is null. */
	private static Double finite(double value) {
		return Double.isFinite(value) ? value : null;
	}
}
