package org.frisket.cli.lettering;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbOptions;
import org.frisket.cli.work.FitnessJson;
import org.frisket.cli.work.Stocks;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.Fitness;
import org.frisket.prepare.fonts.FontFitness;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.UnknownFontException;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which fonts can be cut. */
@Command(name = "fonts", description = "Lists how well fonts can be cut for a text, the fittest first.", sortOptions = false)
public final class FontsVerb implements Callable<Integer> {

	@Option(names = "--for", required = true, paramLabel = "T", description = "The text; \\n begins a new line.")
	private String text;

	@Option(names = "--height", required = true, paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, //
			description = "Height of a capital H, such as 40mm or 1.5in.")
	private Double height;

	@Option(names = "--font", paramLabel = "FILE|NAME", description = "A font to look at; may be given several times (default all at hand that have the characters).")
	private List<String> fonts = List.of();

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
	private VerbOptions verb = new VerbOptions();

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		String wording = Conversions.lines(text);
		if (wording.isBlank()) {
			throw new Refusal("--for: there is nothing in it to set");
		}
		Limits limits = Stocks.limits(stock, thinnest, smallest);
		Stocks.known().problems().forEach(verb.err()::println);
		FontFitness.Ranking ranking = ranking(wording, limits);
		if (ranking.fonts().isEmpty()) {
			throw new Refusal("--for: " + (fonts.isEmpty()
					? "none of the %d fonts at hand can set it, such as: %s".formatted(ranking.leftOut().size(), ranking.leftOut().get(0))
					: "no font can set it: " + String.join("; ", ranking.leftOut())));
		}
		PrintWriter out = verb.out();
		if (json) {
			out.println(FitnessJson.text(ranking.fonts()));
		} else {
			table(out, ranking);
		}
		return Status.DONE;
	}

	private FontFitness.Ranking ranking(String wording, Limits limits) throws Refusal {
		FontFitness fitness = new FontFitness(FontLibraries.installed(), wording, height, tolerance);
		try {
			return fonts.isEmpty() ? fitness.ofAll(limits, Monitor.NONE) : fitness.of(fonts, limits, Monitor.NONE);
		} catch (UnknownFontException | UnreadableFontException | IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	private void table(PrintWriter out, FontFitness.Ranking ranking) {
		int width = ranking.fonts().stream().mapToInt(font -> font.name().length()).max().orElse(0);
		String row = "%-" + Math.max(4, width) + "s  %4s  %8s  %7s  %7s  %7s  %6s  %7s  %6s%n";
		out.printf(row, "font", "cuts", "from", "stroke", "gap", "counter", "point", "piece", "pieces");
		for (FontFitness.Font font : ranking.fonts()) {
			Fitness fitness = font.fitness();
			double from = fitness.smallestHeight().orElse(Double.POSITIVE_INFINITY);
			out.printf(row, font.name(), fitness.cuts() ? "yes" : "no", number(Optional.of(from)),
					measure(fitness.thinnestStroke()), measure(fitness.narrowestGap()),
					measure(fitness.smallestCounter()), measure(fitness.sharpestPoint()),
					measure(fitness.smallestPiece()), fitness.pieces());
		}
		out.println("lengths in mm, points in degrees; from: the least height at which it cuts cleanly");
		if (!fonts.isEmpty()) {
			ranking.leftOut().forEach(reason -> out.println("left out: " + reason));
		}
	}

	private static String measure(Optional<Fitness.Measure> measure) {
		return number(measure.map(Fitness.Measure::value));
	}

	private static String number(Optional<Double> value) {
		return value.filter(Double::isFinite).map(mm -> String.format(Locale.ROOT, "%.2f", mm)).orElse("-");
	}
}
