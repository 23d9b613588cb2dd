package org.frisket.cli.files;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import org.frisket.cli.line.OptionList;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.work.Preparation;
import org.frisket.cli.work.Targets;
import org.frisket.geometry.Length;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.repair.RepairCourse;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedLayer;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.repair.RepairSteps;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Any outline file in, clean one out, with a report of each repair. */
@Command(name = "clean", description = "Repairs artwork from anywhere, layer by layer, and writes it ready to cut.", //
		sortOptions = false)
public final class CleanVerb implements Callable<Integer> {

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
			OptionList list = new OptionList(out);
			list.importers();
			list.repairs();
			return Status.DONE;
		}
		if (file == null || outputs.isEmpty()) {
			throw new Refusal("say which artwork and, with --out, which file");
		}
		Targets targets = Targets.of(outputs);
		ArtFile art = ArtFile.of(file, options);
		try {
			RepairCourse course = RepairSteps.course(art.others());
			return write(targets, art.read(), course, out);
		} catch (ContributionException | IllegalArgumentException e) {
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
		if (Jobs.elements(job).isEmpty()) {
			throw new Refusal(file + ": " + (art.layers().stream().allMatch(layer -> layer.shapes().isEmpty())
					? "there is nothing in it to clean"
					: "nothing is left of it once it is cleaned to " + Length.text(tolerance.mm(), 6) + "; choose a smaller --tolerance"));
		}
		targets.write(job, Preparation.of(job, tolerance).prepared(), Map.of(), spec.commandLine().getErr());
		CleanReport report = new CleanReport(file, outputs, layers, art.remarks(), pen);
		if (json) {
			out.println(report.json());
		} else {
			report.print(out);
		}
		return report.isBlocked() ? Status.BLOCKED : Status.DONE;
	}
}
