package org.frisket.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.frisket.geometry.Tolerance;
import org.frisket.prepare.checks.Limits;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makeready of a job, one finding a line. */
@Command(name = "inspect", description = "Checks a job before a sheet is run and lists the findings.", sortOptions = false)
final class InspectVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Parameters(paramLabel = "FILE", description = "The job, a .frjob file.")
	private Path file;

	@Option(names = "--thinnest", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, //
			description = "The narrowest stroke allowed (default 1mm).")
	private Double thinnest;

	@Option(names = "--smallest", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, //
			description = "The shortest piece allowed (default 2mm).")
	private Double smallest;

	@Option(names = "--tolerance", paramLabel = "LENGTH", defaultValue = "0.02mm", description = "Greatest deviation of curves (default ${DEFAULT-VALUE}).")
	private Tolerance tolerance;

	@Option(names = "--json", description = "Writes JSON for machines; lengths in mm.")
	private boolean json;

	@Mixin
	private StudioOption studio = new StudioOption();

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public Integer call() throws Refusal {
		studio.choose();
		Limits limits = Limits.CARD;
		if (thinnest != null) {
			limits = limits.withThinnestStroke(thinnest);
		}
		if (smallest != null) {
			limits = limits.withSmallestPiece(smallest);
		}
		Preparation preparation = Preparation.of(Preparation.load(file), tolerance, limits);
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			out.println(FindingsJson.text(preparation.findings()));
		} else {
			new Report(out).findings(preparation.findings());
			if (preparation.findings().isEmpty()) {
				out.println("nothing found");
			}
		}
		return preparation.status();
	}
}
