package org.frisket.cli.print;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import org.frisket.cli.files.ArtFile;
import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.work.Preparation;
import org.frisket.cli.work.Targets;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.print.contour.ContourOptions;
import org.frisket.print.contour.ContourTracer;
import org.frisket.print.contour.HoleRule;
import org.frisket.print.contour.TracedContour;
import org.frisket.print.picture.PictureFile;
import org.frisket.print.picture.Resolution;
import org.frisket.print.picture.UnreadablePictureException;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A picture in, the contour of its art out. */
@Command(name = "trace", description = "Finds the contour of the art in a picture and writes it as smooth curves, ready to cut.", //
		sortOptions = false)
public final class TraceVerb implements Callable<Integer> {

	/** Of what is written, from the contour: far finer than it. */
	private static final Tolerance TOLERANCE = new Tolerance(0.005);

	@Spec
	private CommandSpec spec;

	@Parameters(paramLabel = "ART", description = "The picture: PNG, JPEG, GIF, BMP, TIFF, WebP, SVG or PDF.")
	private Path art;

	@Option(names = "--page", paramLabel = "N", defaultValue = "1", //
			description = "Which page of a PDF (default ${DEFAULT-VALUE}).")
	private int page;

	@Option(names = "--dpi", paramLabel = "N", //
			description = "Dots to the inch that it is printed with, as a rule what the picture says; SVG and PDF are drawn with them, as a rule up to 1200.")
	private Double dpi;

	@Option(names = "--width", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, //
			description = "How wide the whole picture is printed, instead of --dpi.")
	private Double width;

	@Option(names = "--background", paramLabel = "WHAT", defaultValue = "auto", converter = BackdropConversion.class, //
			description = "What is no art: transparent, a colour such as #f4f0e6, or auto, which looks at the border (default ${DEFAULT-VALUE}).")
	private BackdropConversion.Choice background;

	@Option(names = "--tolerance", paramLabel = "N", defaultValue = "10", description = "How far a colour may be from the background's, of 100 from black to white (default ${DEFAULT-VALUE}).")
	private double difference;

	@Option(names = "--shadow", paramLabel = "N", defaultValue = "0", description = "How much darker a shadow on the background may be, of 100 (default ${DEFAULT-VALUE}).")
	private double shadow;

	@Option(names = "--specks", paramLabel = "LENGTH", defaultValue = "0.5mm", converter = Conversions.AnyLength.class, //
			description = "Parts and holes below this size are left out (default ${DEFAULT-VALUE}).")
	private double specks;

	@Option(names = "--holes", paramLabel = "RULE", defaultValue = "auto", description = "keep, fill, or auto: kept where the picture is transparent there (default ${DEFAULT-VALUE}).")
	private String holes;

	@Option(names = "--smooth", paramLabel = "LENGTH", defaultValue = "0mm", converter = Conversions.AnyLength.class, //
			description = "Evens out gaps and points that a disc of this radius does not reach (default ${DEFAULT-VALUE}).")
	private double smoothing;

	@Option(names = "--offset", paramLabel = "LENGTH", defaultValue = "0mm", converter = Conversions.AnyLength.class, //
			description = "Moves the contour outwards, or inwards if negative (default ${DEFAULT-VALUE}).")
	private double offset;

	@Option(names = "--one", description = "Makes one piece of several, by bridges over the gaps between them.")
	private boolean one;

	@Option(names = "--deviation", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, //
			description = "How far curves may lie from the edge of the art; as a rule three tenths of a pixel.")
	private Double deviation;

	@Option(names = "--out", required = true, paramLabel = "FILE", description = "What to write, by its ending: .frjob or a format of frisket export; may be given several times.")
	private List<Path> outputs;

	@Option(names = "--json", description = "Writes JSON for machines; lengths in mm.")
	private boolean json;

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public Integer call() throws Refusal {
		Targets targets = Targets.of(outputs);
		try {
			PictureFile picture = picture();
			Resolution resolution = resolution(picture);
			ContourOptions options = options(resolution);
			TracedContour traced = ContourTracer.trace(picture.pixels(Monitor.NONE), resolution, options, Monitor.NONE);
			TraceReport report = new TraceReport(picture, resolution, traced, outputs);
			if (traced.isBlocked()) {
				throw new Refusal("“" + art + "”: " + report.reason());
			}
			Job job = job(traced);
			targets.write(job, Preparation.of(job, TOLERANCE).prepared(), Map.of(), spec.commandLine().getErr());
			if (json) {
				spec.commandLine().getOut().println(report.json());
			} else {
				report.print(spec.commandLine().getOut());
			}
			return Status.DONE;
		} catch (UnreadablePictureException e) {
			throw new Refusal(e);
		}
	}

	/** What has no pixels gets as many as are asked for. */
	private PictureFile picture() throws Refusal, UnreadablePictureException {
		if (page < 1) {
			throw new Refusal("--page: pages count from 1");
		}
		if (Files.isDirectory(art)) {
			throw new Refusal("“" + art + "”: this is a folder");
		}
		PictureFile picture = PictureFile.of(art, page);
		return dpi != null && Resolution.isSound(dpi) ? picture.drawnAt(dpi) : width != null ? picture.drawnFor(width) : picture;
	}

	private Resolution resolution(PictureFile picture) throws Refusal {
		if (dpi != null && width != null) {
			throw new Refusal("--dpi and --width say the same thing: give one of them");
		}
		double given = dpi != null ? dpi : width != null ? Resolution.effective(picture.width(), width) : 0;
		if ((dpi != null || width != null) && !Resolution.isSound(given)) {
			throw new Refusal("%s: that is %.4g dots to the inch; there are %.0f at least and %.0f at most".formatted(
					dpi != null ? "--dpi" : "--width", given, Resolution.LEAST, Resolution.MOST));
		}
		if (picture.format().isDrawn()) {
			double across = width == null ? picture.trueWidth() : width;
			double down = across * picture.trueHeight() / picture.trueWidth();
			return new Resolution(Resolution.effective(picture.width(), across), Resolution.effective(picture.height(), down),
					Resolution.Source.DRAWN);
		}
		return given > 0 ? Resolution.given(given) : picture.resolution();
	}

	private ContourOptions options(Resolution resolution) throws Refusal {
		HoleRule rule = switch (holes) {
		case "auto" -> HoleRule.AS_TOLD;
		case "keep" -> HoleRule.KEEP;
		case "fill" -> HoleRule.FILL;
		default -> throw new Refusal("--holes: “" + holes + "” is not one of auto, keep, fill");
		};
		requirePercent("--tolerance", difference);
		requirePercent("--shadow", shadow);
		double pixel = Math.min(resolution.pixelWidth(), resolution.pixelHeight());
		try {
			return new ContourOptions(background.backdrop(), difference, shadow, specks, 0, rule, smoothing, offset, one,
					deviation == null ? ContourOptions.USUAL.deviation() : deviation / pixel);
		} catch (IllegalArgumentException e) {
			throw new Refusal("out of range: " + e.getMessage());
		}
	}

	private static void requirePercent(String option, double value) throws Refusal {
		if (!(value >= 0 && value <= 100)) {
			throw new Refusal(option + ": " + value + " is not between 0 and 100");
		}
	}

	private Job job(TracedContour traced) {
		Job job = Jobs.create("job", ArtFile.title(art));
		Element contour = Jobs.addOutline(Jobs.addLayer(job, "contour"), PathData.format(traced.region().toOutline()));
		contour.setName("contour");
		Jobs.addOperation(contour, OperationKind.CUT);
		return job;
	}
}
