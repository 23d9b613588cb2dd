package org.frisket.cli.jobs;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;

import org.frisket.cli.files.ArtFile;
import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.VerbOptions;
import org.frisket.cli.work.FindingsJson;
import org.frisket.cli.work.MeasuresReport;
import org.frisket.cli.work.Preparation;
import org.frisket.cli.work.Report;
import org.frisket.cli.work.Stocks;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.RegionMeasures;
import org.frisket.imports.Importers;
import org.frisket.imports.job.TakenArt;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.checks.StockLimits;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makeready of a job, one finding a line. */
@Command(name = "inspect", description = "Checks a job or artwork before a sheet is run and lists the findings.", sortOptions = false)
public final class InspectVerb implements Callable<Integer> {

	@Parameters(paramLabel = "FILE", description = "The job, a .frjob file, or artwork, which is looked at as frisket import would take it over.")
	private Path file;

	@Option(names = "--stock", paramLabel = "ID", description = "What it is cut from: card, heavy-card, paper, film or the id of one on the shelf or in the limits of the studio (default each layer's own, card where it has none).")
	private String stock;

	@Option(names = "--thinnest", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, //
			description = "The narrowest stroke allowed (default that of the stock).")
	private Double thinnest;

	@Option(names = "--smallest", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, //
			description = "The shortest piece allowed (default that of the stock).")
	private Double smallest;

	@Option(names = "--tolerance", paramLabel = "LENGTH", defaultValue = "0.02mm", description = "Greatest deviation of curves (default ${DEFAULT-VALUE}).")
	private Tolerance tolerance;

	@Option(names = "--set", paramLabel = "OPTION=VALUE", description = "For artwork, an option as of frisket import.")
	private Map<String, String> options = Map.of();

	@Option(names = "--json", description = "Writes JSON for machines; lengths in mm.")
	private boolean json;

	@Option(names = "--measures", description = "Lists area, length, pieces and all else that is measured, an element a line.")
	private boolean measures;

	@Mixin
	private VerbOptions verb = new VerbOptions();

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		Preparation preparation = Preparation.measured(job(), tolerance,
				Stocks.ofLayers(stock, thinnest, smallest));
		Map<PreparedElement, RegionMeasures> measured = measures ? preparation.measures(tolerance) : Map.of();
		PrintWriter out = verb.out();
		if (json) {
			out.println(FindingsJson.text(preparation.findings(), bases(preparation.prepared().job()),
					preparation.wordings(), measured));
		} else {
			bases(preparation.prepared().job()).forEach(out::println);
			new Report(out).findings(preparation.findings());
			if (preparation.findings().isEmpty()) {
				out.println("nothing found");
			}
			new Report(out).wordings(preparation.wordings());
			measured.forEach((element, all) -> out.println(MeasuresReport.line(element, all)));
		}
		return preparation.status();
	}

	/** What is common practice only among the limits that were used, a sentence for each stock. */
	private List<String> bases(Job job) {
		Stream<String> stocks = stock != null ? Stream.of(stock)
				: job.getLayers().stream().map(Layer::getStock).filter(Objects::nonNull).distinct();
		StockLimits known = Stocks.known();
		return stocks.flatMap(each -> known.basis(each).stream()).toList();
	}

	private Job job() throws Refusal {
		if (Importers.forFile(file.toString()).isPresent()) {
			TakenArt taken = ArtFile.of(file, options).take(tolerance);
			if (taken.isEmpty()) {
				throw new Refusal(file + ": there is nothing in it that a job could hold");
			}
			return taken.job();
		}
		if (!options.isEmpty()) {
			throw new Refusal("--set: there is nothing to set about “" + file + "”");
		}
		return Preparation.load(file);
	}
}
