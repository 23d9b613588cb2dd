package org.frisket.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.repair.RepairCourse;
import org.frisket.geometry.repair.RepairStep;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportTask;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedLayer;
import org.frisket.imports.Importer;
import org.frisket.imports.Importers;
import org.frisket.imports.UnreadableArtException;
import org.frisket.model.Job;
import org.frisket.prepare.RepairSteps;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Any outline file in, clean one out, with a report of each repair. */
@Command(name = "clean", description = "Repairs artwork from anywhere, layer by layer, and writes it ready to cut.", //
		sortOptions = false)
final class CleanVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Parameters(arity = "0..1", paramLabel = "FILE", description = "The artwork, by its ending; see --list.")
	private Path file;

	@picocli.CommandLine.Option(names = "--out", paramLabel = "FILE", description = "What to write, by its ending: .frjob or a format of frisket export; may be given several times.")
	private List<Path> outputs = List.of();

	@picocli.CommandLine.Option(names = "--tolerance", paramLabel = "LENGTH", defaultValue = "0.02mm", description = "How far anything may move; gaps up to it are closed (default ${DEFAULT-VALUE}).")
	private Tolerance tolerance;

	@picocli.CommandLine.Option(names = "--set", paramLabel = "OPTION=VALUE", description = "An option of the format read or of a repair; see --list.")
	private Map<String, String> options = Map.of();

	@picocli.CommandLine.Option(names = "--pen", description = "Lines that stay open are meant for the pen, and no reason to complain.")
	private boolean pen;

	@picocli.CommandLine.Option(names = "--list", description = "Lists the formats that can be read and the repairs, with their options.")
	private boolean list;

	@picocli.CommandLine.Option(names = "--json", description = "Writes JSON for machines; lengths in mm.")
	private boolean json;

	@picocli.CommandLine.Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public Integer call() throws Refusal {
		PrintWriter out = spec.commandLine().getOut();
		if (list) {
			list(out);
			return Frisket.DONE;
		}
		if (file == null || outputs.isEmpty()) {
			throw new Refusal("say which artwork and, with --out, which file");
		}
		Targets targets = Targets.of(outputs);
		Contribution<Importer> importer = Importers.forFile(file.toString()).orElseThrow(
				() -> new Refusal("no format is known for “" + file + "”; there are " + endings()));
		try {
			Map<String, String> forRepair = new LinkedHashMap<>(options);
			Map<String, String> forImport = new LinkedHashMap<>(options);
			List<String> known = importer.create().options().stream().map(Option::name).toList();
			forRepair.keySet().removeAll(known);
			forImport.keySet().retainAll(known);
			RepairCourse course = RepairSteps.course(forRepair);
			ImportedArt art = new ImportTask(importer).read(ImportSource.of(file), forImport, Monitor.NONE);
			return write(targets, art, course, out);
		} catch (IOException | UnreadableArtException | ContributionException | IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	private int write(Targets targets, ImportedArt art, RepairCourse course, PrintWriter out)
			throws Refusal, ContributionException {
		List<CleanedLayer> layers = new ArrayList<>();
		for (ImportedLayer layer : art.layers()) {
			layers.add(CleanedLayer.of(layer, course, tolerance));
		}
		Job job = CleanedJob.of(file, layers);
		targets.write(job, Preparation.of(job, tolerance).prepared(), Map.of(), spec.commandLine().getErr());
		CleanReport report = new CleanReport(file, outputs, layers, art.remarks(), pen);
		if (json) {
			out.println(report.json());
		} else {
			report.print(out);
		}
		return report.isBlocked() ? Frisket.BLOCKED : Frisket.DONE;
	}

	private static String endings() {
		return String.join(", ", Importers.all().stream().flatMap(each -> Importers.endings(each).stream())
				.map(ending -> "." + ending).toList());
	}

	private static void list(PrintWriter out) {
		for (Contribution<Importer> importer : Importers.all()) {
			out.printf(".%s %s (%s)%n", String.join(" .", Importers.endings(importer)), Importers.name(importer),
					importer.bundle());
			try {
				list(importer.create().options(), out);
			} catch (ContributionException | RuntimeException e) {
				out.println("    cannot be used: " + e.getMessage());
			}
		}
		for (Contribution<RepairStep> step : RepairSteps.all()) {
			out.printf("%s (%s)%n", RepairSteps.name(step), step.bundle());
			try {
				list(RepairSteps.options(step), out);
			} catch (ContributionException e) {
				out.println("    cannot be used: " + e.getMessage());
			}
		}
	}

	private static void list(List<Option> options, PrintWriter out) {
		for (Option option : options) {
			out.printf("    %s=%s: %s%s%n", option.name(), option.initial(), option.description(),
					option.choices().isEmpty() ? "" : " (" + String.join(", ", option.choices()) + ")");
		}
	}
}
