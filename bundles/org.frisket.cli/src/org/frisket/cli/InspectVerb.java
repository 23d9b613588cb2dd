package org.frisket.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.frisket.geometry.Tolerance;

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

	@Option(names = "--stock", paramLabel = "ID", defaultValue = Stocks.USUAL, description = "What it is cut from: card, heavy-card, paper or film (default ${DEFAULT-VALUE}).")
	private String stock;

	@Option(names = "--thinnest", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, //
			description = "The narrowest stroke allowed (default that of the stock).")
	private Double thinnest;

	@Option(names = "--smallest", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, //
			description = "The shortest piece allowed (default that of the stock).")
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
		Preparation preparation = Preparation.measured(Preparation.load(file), tolerance,
				Stocks.limits(stock, thinnest, smallest));
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			out.println(FindingsJson.text(preparation.findings(), preparation.wordings()));
		} else {
			new Report(out).findings(preparation.findings());
			if (preparation.findings().isEmpty()) {
				out.println("nothing found");
			}
			new Report(out).wordings(preparation.wordings());
		}
		return preparation.status();
	}
}
