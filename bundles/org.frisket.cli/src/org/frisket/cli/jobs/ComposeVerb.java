package org.frisket.cli.jobs;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import org.frisket.cli.lettering.LetteringOptions;
import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.VerbOptions;
import org.frisket.cli.work.Preparation;
import org.frisket.cli.work.Report;
import org.frisket.cli.work.Stocks;
import org.frisket.cli.work.Targets;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Alignment;
import org.frisket.model.CornerJoin;
import org.frisket.model.HoleRule;
import org.frisket.model.Job;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Composition;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.UnknownFontException;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Wording in, cut-ready file out. */
@Command(name = "compose", description = "Sets wording in a typeface and writes it ready to cut, with its mats.", //
		sortOptions = false)
public final class ComposeVerb implements Callable<Integer> {

	private static final List<String> OF_MATS = List.of("--corners", "--holes", "--mat-form", "--hull-reach", "--shadow",
			"--frame", "--frame-margin", "--frame-width", "--mat-radius", "--smallest-hole");

	@Spec
	private CommandSpec spec;

	@Option(names = "--text", required = true, paramLabel = "T", description = "The wording; \\n begins a new line.")
	private String text;

	@Option(names = "--font", required = true, paramLabel = "FILE|NAME", description = "A font file, or the name of a font the product or the system has.")
	private String font;

	@Option(names = "--height", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, //
			description = "Height of a capital H, such as 40mm or 1.5in; needed unless --fit is given.")
	private Double height;

	@Option(names = "--touch", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, //
			description = "Joins the letters of each word, overlapping by this much.")
	private Double touch;

	@Option(names = "--mat", paramLabel = "LENGTH", split = ",", converter = Conversions.Distance.class, //
			description = "A mat behind the wording, this much larger; several parted by commas.")
	private List<Double> mats = List.of();

	@Option(names = "--corners", paramLabel = "JOIN", defaultValue = "round", description = "Of the mats: round, mitre or bevel (default ${DEFAULT-VALUE}).")
	private String corners;

	@Option(names = "--holes", paramLabel = "RULE", defaultValue = "keep", description = "Of the mats: keep, fill or fillSmall (default ${DEFAULT-VALUE}).")
	private String holes;

	@Mixin
	private MatOptions shapes = new MatOptions();

	@Option(names = "--align", paramLabel = "SIDE", description = "Of several lines: left, centre, right or justify (default left; on an arc centre).")
	private String align;

	@Mixin
	private LetteringOptions lettering = new LetteringOptions();

	@Option(names = "--draw", description = "Draws with the pen instead of cutting.")
	private boolean draw;

	@Option(names = "--stock", paramLabel = "ID", description = "What all layers are cut from: card, heavy-card, paper, film or the id of one on the shelf or in the limits of the studio.")
	private String stock;

	@Option(names = "--tolerance", paramLabel = "LENGTH", defaultValue = "0.02mm", description = "Greatest deviation of curves (default ${DEFAULT-VALUE}).")
	private Tolerance tolerance;

	@Option(names = "--out", required = true, paramLabel = "FILE", description = "What to write, by its ending: .frjob or a format of frisket export; may be given several times.")
	private List<Path> outputs;

	@Mixin
	private VerbOptions verb = new VerbOptions();

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		Targets targets = Targets.of(outputs);
		String wording = Conversions.lines(text);
		FontFace face = face();
		requireGlyphs(wording, face);
		lettering.check(face);
		shapes.check();
		requireUse();
		lettering.checkLetters(wording);
		if (stock != null) {
			Stocks.limits(stock, null, null);
		}
		Composition composition = new Composition(wording, face, height(),
				align == null ? lettering.usualAlignment() : choice("--align", align, Alignment.class),
				touch == null ? OptionalDouble.empty() : OptionalDouble.of(touch), mats,
				choice("--corners", corners, CornerJoin.class), choice("--holes", holes, HoleRule.class),
				draw ? OperationKind.DRAW : OperationKind.CUT);
		Job job = composition.toJob(lettering::decide);
		shapes.decide(job);
		if (stock != null) {
			job.getLayers().forEach(layer -> layer.setStock(stock));
		}
		Preparation preparation = Preparation.of(job, tolerance);
		targets.write(job, preparation.prepared(), Map.of(), verb.err());
		Report report = new Report(verb.out());
		report.summary(preparation.prepared(), outputs);
		report.font(face, draw);
		report.findings(preparation.findings());
		return preparation.status();
	}

	/** What would be passed over in silence is refused, for somebody meant it. */
	private void requireUse() throws Refusal {
		if (height != null && lettering.boxHeight().isPresent()) {
			throw new Refusal("--fit: the box decides the height; leave --height out");
		}
		if (mats.isEmpty()) {
			for (String option : OF_MATS) {
				if (spec.commandLine().getParseResult().hasMatchedOption(option)) {
					throw new Refusal(option + ": there is no mat; give --mat too");
				}
			}
		}
	}

	/** Any will do for a box that decides. */
	private double height() {
		if (height == null && lettering.boxHeight().isEmpty()) {
			throw new ParameterException(spec.commandLine(), "Missing required option: '--height=LENGTH'");
		}
		return height != null ? height : lettering.boxHeight().getAsDouble();
	}

	private FontFace face() throws Refusal {
		try {
			return FontLibraries.installed().find(font);
		} catch (UnknownFontException | UnreadableFontException e) {
			throw new Refusal(e);
		}
	}

	private static void requireGlyphs(String wording, FontFace face) throws Refusal {
		if (wording.isBlank()) {
			throw new Refusal("--text: there is nothing in it to set");
		}
		if (wording.codePoints().filter(c -> !Character.isWhitespace(c)).noneMatch(face::covers)) {
			throw new Refusal("--text: “" + face.fullName() + "” has no glyph for any character of it");
		}
	}

	private static <E extends Enum<E>> E choice(String option, String word, Class<E> type) throws Refusal {
		for (E choice : type.getEnumConstants()) {
			if (choice.toString().equals(word)) {
				return choice;
			}
		}
		throw new Refusal(option + ": “" + word + "” is not one of " + Arrays.stream(type.getEnumConstants())
				.map(Enum::toString).collect(Collectors.joining(", ")));
	}
}
