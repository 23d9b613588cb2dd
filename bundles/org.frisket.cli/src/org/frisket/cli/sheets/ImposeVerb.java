package org.frisket.cli.sheets;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import org.frisket.cli.files.ArtFile;
import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.work.Targets;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.impose.Budget;
import org.frisket.impose.Ground;
import org.frisket.impose.Imposer;
import org.frisket.impose.Imposition;
import org.frisket.impose.Layout;
import org.frisket.impose.Part;
import org.frisket.impose.Turning;
import org.frisket.model.Job;
import org.frisket.prepare.FontLibraries;
import org.frisket.prepare.JobPreparer;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Parts of a file on sheets or a roll. */
@Command(name = "impose", description = "Lays every shape of a file on sheets or a roll by its true shape, with little waste.", //
		sortOptions = false)
public final class ImposeVerb implements Callable<Integer> {

	@Spec
	private CommandSpec spec;

	@Parameters(paramLabel = "FILE", description = "The parts: every path of an outline file; data-quantity of a path of an SVG file says how many.")
	private Path file;

	/** One of both. */
	private static final class GroundOption {

		@Option(names = "--roll", paramLabel = "WIDTH", required = true, converter = Conversions.PositiveLength.class, description = "On a roll of this width.")
		private Double roll;

		@Option(names = "--sheet", paramLabel = "WxH", required = true, converter = Conversions.BoxConversion.class, description = "On sheets of this size, such as 12x12in.")
		private Conversions.Box sheet;
	}

	@ArgGroup(multiplicity = "1")
	private GroundOption ground;

	@Option(names = "--sheets", paramLabel = "COUNT", description = "How many sheets there are at most.")
	private Integer sheets;

	@Option(names = "--gap", paramLabel = "LENGTH", defaultValue = "2mm", converter = Conversions.AnyLength.class, description = "Between parts (default ${DEFAULT-VALUE}).")
	private double gap;

	@Option(names = "--margin", paramLabel = "LENGTH", defaultValue = "5mm", converter = Conversions.AnyLength.class, description = "Along the edges of a sheet (default ${DEFAULT-VALUE}).")
	private double margin;

	@Option(names = "--turn", paramLabel = "none|180|90|free", defaultValue = "none", converter = TurnConversion.class, description = "How parts may be turned; grain allows 180 (default ${DEFAULT-VALUE}).")
	private Turning turning;

	@Option(names = "--seconds", paramLabel = "SECONDS", defaultValue = "60", description = "How long to look for better layouts (default ${DEFAULT-VALUE}).")
	private double seconds;

	@Option(names = "--steps", paramLabel = "COUNT", description = "How many steps to look for, instead of a time: the same layout on every machine.")
	private Long steps;

	@Option(names = "--seed", paramLabel = "NUMBER", defaultValue = "1", description = "Of what is left to chance (default ${DEFAULT-VALUE}).")
	private long seed;

	@Option(names = "--out", paramLabel = "FILE", description = "What to write, by its ending: .frjob or a format of frisket export; may be given several times. Sheets lie side by side, each a layer.")
	private List<Path> outputs = List.of();

	@Option(names = "--set", paramLabel = "OPTION=VALUE", description = "An option of the format read, as of frisket import.")
	private Map<String, String> options = Map.of();

	@Option(names = "--json", description = "Writes JSON for machines; lengths in mm.")
	private boolean json;

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public Integer call() throws Refusal {
		long begun = System.nanoTime();
		Targets targets = Targets.of(outputs);
		Budget budget = budget();
		ArtParts parts = ArtParts.of(file, ArtFile.of(file, options).read(), Tolerance.DEFAULT, turning);
		Layout layout = Imposer.lay(imposition(parts.parts()), budget, better -> {
			// only the best is written
		}, Monitor.NONE);
		double took = (System.nanoTime() - begun) / 1e9;
		PrintWriter notes = spec.commandLine().getErr();
		parts.passedOver().forEach(notes::println);
		if (!outputs.isEmpty()) {
			Job job = LayoutJob.of(ArtFile.title(file), layout);
			targets.write(job, new JobPreparer(FontLibraries.installed()).prepare(job, Tolerance.DEFAULT, Monitor.NONE),
					Map.of(), notes);
		}
		LayoutReport report = new LayoutReport(layout, took, seed);
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			out.println(report.json());
		} else {
			report.print(out);
		}
		return layout.left().isEmpty() ? Status.DONE : Status.BLOCKED;
	}

	private Budget budget() throws Refusal {
		try {
			return steps != null ? Budget.steps(steps, seed) : Budget.seconds(seconds, seed);
		} catch (IllegalArgumentException e) {
			throw new Refusal("--seconds, --steps: no less than 0");
		}
	}

	private Imposition imposition(List<Part> parts) throws Refusal {
		int most = sheets == null ? Integer.MAX_VALUE : sheets;
		if (gap < 0 || margin < 0 || most < 1) {
			throw new Refusal("--gap, --margin: no less than 0; --sheets: 1 at least");
		}
		try {
			Ground on = ground.roll != null ? Ground.roll(ground.roll)
					: new Ground(ground.sheet.width(), ground.sheet.height(), most);
			return new Imposition(parts, on, gap, margin);
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	/** {@code none}, {@code 180}, {@code 90} or {@code free}. */
	static final class TurnConversion implements ITypeConverter<Turning> {

		@Override
		public Turning convert(String text) {
			return switch (text) {
			case "none" -> Turning.NONE;
			case "180" -> Turning.HALF;
			case "90" -> Turning.QUARTER;
			case "free" -> Turning.FREE;
			default -> throw new TypeConversionException(
					"“" + text + "” is no turn; there are none, 180, 90, free");
			};
		}
	}
}
