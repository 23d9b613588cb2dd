package org.frisket.cli.files;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbOptions;
import org.frisket.cli.work.Preparation;
import org.frisket.cli.work.Report;
import org.frisket.cli.work.Targets;
import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.model.Job;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** A job as a file of any format at hand. */
@Command(name = "export", description = "Writes a job in another format.", sortOptions = false)
public final class ExportVerb implements Callable<Integer> {

	@Parameters(arity = "0..1", paramLabel = "FILE", description = "The job, a .frjob file.")
	private Path file;

	@picocli.CommandLine.Option(names = "--out", paramLabel = "FILE", description = "What to write, by its ending; may be given several times.")
	private List<Path> outputs = List.of();

	@picocli.CommandLine.Option(names = "--set", paramLabel = "OPTION=VALUE", description = "An option of the format; see --list.")
	private Map<String, String> options = Map.of();

	@picocli.CommandLine.Option(names = "--list", description = "Lists the formats and their options.")
	private boolean list;

	@picocli.CommandLine.Option(names = "--tolerance", paramLabel = "LENGTH", defaultValue = "0.02mm", description = "Greatest deviation of curves (default ${DEFAULT-VALUE}).")
	private Tolerance tolerance;

	@Mixin
	private VerbOptions verb = new VerbOptions();

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		PrintWriter out = verb.out();
		if (list) {
			Exporters.all().forEach(exporter -> list(exporter, out));
			return Status.DONE;
		}
		if (file == null || outputs.isEmpty()) {
			throw new Refusal("say which job and, with --out, which file");
		}
		Targets targets = Targets.of(outputs);
		Job job = Preparation.load(file);
		Preparation preparation = Preparation.of(job, tolerance);
		targets.write(job, preparation.prepared(), options, verb.err());
		Report report = new Report(out);
		report.summary(preparation.prepared(), outputs);
		report.findings(preparation.findings());
		return preparation.status();
	}

	private static void list(Contribution<Exporter> exporter, PrintWriter out) {
		out.printf(".%s %s (%s)%n", Exporters.ending(exporter), Exporters.name(exporter), exporter.bundle());
		try {
			for (Option option : exporter.create().options()) {
				out.printf("    %s=%s: %s%s%n", option.name(), option.initial(), option.description(),
						option.choices().isEmpty() ? "" : " (" + String.join(", ", option.choices()) + ")");
			}
		} catch (ContributionException | RuntimeException e) {
			out.println("    cannot be used: " + e.getMessage());
		}
	}
}
