package org.frisket.cli.files;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;

import org.frisket.cli.line.OptionList;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.work.Preparation;
import org.frisket.cli.work.Targets;
import org.frisket.geometry.Tolerance;
import org.frisket.imports.job.ArtRules;
import org.frisket.imports.job.TakenArt;
import org.frisket.model.JobFile;
import org.frisket.prepare.Finding;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A file of others becomes a job that goes on from there. */
@Command(name = "import", description = "Makes a job of artwork from anywhere: its layers, outlines, lines and pictures.", //
		sortOptions = false)
public final class ImportVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Parameters(arity = "0..1", paramLabel = "FILE", description = "The artwork, by its ending; see --list.")
	private Path file;

	@Option(names = "--out", paramLabel = "FILE", description = "The job to write, a .frjob file.")
	private Path output;

	@Option(names = "--tolerance", paramLabel = "LENGTH", defaultValue = "0.02mm", description = "How far a repair may move anything; gaps up to it are closed (default ${DEFAULT-VALUE}).")
	private Tolerance tolerance;

	@Option(names = "--set", paramLabel = "OPTION=VALUE", description = "An option of the format, of what becomes of it, or of a repair; see --list.")
	private Map<String, String> options = Map.of();

	@Option(names = "--page", paramLabel = "N", description = "Which page of a PDF, from 1; the same as --set page=N.")
	private Integer page;

	@Option(names = "--no-repair", description = "Takes everything over as it is.")
	private boolean unrepaired;

	@Option(names = "--list", description = "Lists the formats that can be read and what can be set.")
	private boolean list;

	@Option(names = "--json", description = "Writes JSON for machines; lengths in mm.")
	private boolean json;

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public Integer call() throws Refusal {
		PrintWriter out = spec.commandLine().getOut();
		if (list) {
			OptionList all = new OptionList(out);
			all.importers();
			all.rules();
			all.repairs();
			return Status.DONE;
		}
		if (file == null || output == null) {
			throw new Refusal("say which artwork and, with --out, which job");
		}
		if (!output.toString().toLowerCase(Locale.ROOT).endsWith(JobFile.ENDING)) {
			throw new Refusal("--out: a job is a " + JobFile.ENDING + " file; frisket clean writes other formats");
		}
		Map<String, String> set = new LinkedHashMap<>(options);
		if (page != null) {
			set.put("page", page.toString());
		}
		if (unrepaired) {
			set.putAll(ArtRules.unrepaired());
		}
		TakenArt taken = ArtFile.of(file, set).take(tolerance);
		if (taken.isEmpty()) {
			throw new Refusal(file + ": there is nothing in it that a job could hold");
		}
		List<Finding> findings = Preparation.of(taken.job(), tolerance).findings();
		Targets.of(List.of(output)).write(taken.job(), null, Map.of(), spec.commandLine().getErr());
		ImportReport report = new ImportReport(file, output, taken, findings);
		if (json) {
			out.println(report.json());
		} else {
			report.print(out);
		}
		return report.isBlocked() ? Status.BLOCKED : Status.DONE;
	}
}
