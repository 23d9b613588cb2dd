package org.frisket.cli.settings;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbOptions;
import org.frisket.material.tools.Machine;
import org.frisket.material.trials.CellPlace;
import org.frisket.material.trials.GoodWindow;
import org.frisket.material.trials.TestSheet;
import org.frisket.material.trials.Verdict;
import org.frisket.material.trials.VerdictChart;
import org.frisket.model.WholeFile;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What came of a test sheet. */
@Command(name = "verdicts", description = "Keeps the verdicts of a test sheet and says which settings went well.", sortOptions = false)
final class VerdictsVerb implements Callable<Integer> {

	@Parameters(index = "0", paramLabel = "SHEET", description = "The id of the sheet.")
	private String id;

	@Parameters(index = "1..*", paramLabel = "CELL=VERDICT", description = "Such as B3=through; * stands for all cells that are not judged yet. Verdicts are through, not-through, torn, carrier-cut and corners-lifted.")
	private List<String> cells = List.of();

	@Option(names = "--chart", paramLabel = "FILE", description = "Writes a picture of the verdicts as SVG.")
	private Path chart;

	@Mixin
	private VerbOptions verb = new VerbOptions();

	private record Judged(TestSheet sheet, Machine machine) {
	}

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		Judged judged = SettingsDesk.change(settings -> {
			TestSheet sheet = settings.sheet(id)
					.orElseThrow(() -> new Refusal("the studio has no test sheet “" + id + "”"));
			TestSheet with = sheet.with(verdicts(sheet));
			settings.save(with);
			return new Judged(with, WorkOptions.machine(settings, with.setup().machine()));
		});
		if (chart != null) {
			try {
				String svg = VerdictChart.svg(judged.sheet(), judged.machine());
				WholeFile.write(out -> out.write(svg.getBytes(StandardCharsets.UTF_8)), chart);
			} catch (IOException e) {
				throw new Refusal("--chart: " + chart + ": " + WholeFile.reason(e));
			}
		}
		report(judged, verb.out());
		return Status.DONE;
	}

	private Map<CellPlace, Verdict> verdicts(TestSheet sheet) throws Refusal {
		Map<CellPlace, Verdict> verdicts = new TreeMap<>();
		Set<CellPlace> judged = new HashSet<>();
		for (String text : cells) {
			int equals = text.indexOf('=');
			if (equals < 1) {
				throw new Refusal("“" + text + "” is no verdict of a cell; write it like B3=through");
			}
			Verdict verdict = SettingsTrialVerb.verdict(text.substring(equals + 1));
			if (text.startsWith("*=")) {
				sheet.places().stream().filter(place -> sheet.verdict(place).isEmpty())
						.forEach(place -> verdicts.putIfAbsent(place, verdict));
			} else {
				CellPlace place = sheet.place(text.substring(0, equals));
				if (!judged.add(place)) {
					throw new Refusal("cell " + place + " is judged twice");
				}
				verdicts.put(place, verdict);
			}
		}
		return verdicts;
	}

	private static void report(Judged judged, PrintWriter out) {
		TestSheet sheet = judged.sheet();
		out.println(sheet.verdicts().size() + " of " + sheet.places().size() + " cells judged");
		if (sheet.window().isEmpty()) {
			out.println("no cell went well yet");
			return;
		}
		GoodWindow window = sheet.window().get();
		out.println("largest block of good cells: " + window.cells());
		out.println("advised " + window.centre() + ": "
				+ SettingsText.line(sheet.settings(window.centre()), judged.machine()));
	}
}
