package org.frisket.cli.print;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbOptions;
import org.frisket.cli.sheets.SheetConversion;
import org.frisket.cli.work.OutputFolder;
import org.frisket.cli.work.Preparation;
import org.frisket.editing.sheets.SetMarks;
import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.export.names.NamePattern;
import org.frisket.export.names.SheetNames;
import org.frisket.export.plan.StudioWorkshop;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Sheet;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.output.PrintAndCut;
import org.frisket.print.output.PrintOptions;
import org.frisket.print.output.PrintSheet;
import org.frisket.print.output.SheetFaces;
import org.frisket.print.output.SheetMarks;
import org.frisket.print.output.TurnEdge;
import org.frisket.print.output.WholeSet;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.Registration;
import org.frisket.studio.Studio;
import org.frisket.toolpath.RunChoices;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** For each sheet of a job the file it is printed from and the one it is cut by. */
@Command(name = "print-and-cut", description = "Writes for each sheet of a job a PDF to print, with bleed and register marks, and a file to cut in the same frame.", sortOptions = false, //
		footer = { "", "Keep hands off the carriage while the machine works the sheet; let prints dry before they go under the rollers." })
public final class PrintAndCutVerb implements Callable<Integer> {

	@Parameters(paramLabel = "FILE", description = "The job, a .frjob file.")
	private Path file;

	@Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder for the files, made if it is missing.")
	private Path folder;

	@Option(names = "--printer-profile", paramLabel = "NAME|FILE", description = "Whose scale and skew are undone: a printer the studio keeps, or a .json file (default none).")
	private String printer;

	@Option(names = "--format", paramLabel = "ENDING", defaultValue = "svg", description = "Of the file to cut (default ${DEFAULT-VALUE}).")
	private String format;

	@Option(names = "--set", paramLabel = "OPTION=VALUE", description = "An option of that format; frisket export --list tells them.")
	private Map<String, String> settings = Map.of();

	@Option(names = "--machine", paramLabel = "ID", defaultValue = "", description = "The machine that is to cut (default that of the latest run, else the only one).")
	private String machine;

	@Option(names = "--only", paramLabel = "N", description = "Only these sheets, such as 2, or 1,3-5 (default all).")
	private String only;

	@Option(names = "--sheet", paramLabel = "WxH", converter = SheetConversion.class, description = "For a job without sheets: the size of the one it is put on, such as A4 (default that of its stock).")
	private Conversions.Box size;

	@Option(names = "--bleed", paramLabel = "LENGTH", converter = Conversions.AnyLength.class, description = "How far art goes on beyond a cut along its edge, unless its picture says otherwise (default 3mm).")
	private Double bleed;

	@Option(names = "--knock-out", description = "Leaves art out where pieces of upper layers will cover it.")
	private boolean knockOut;

	@Option(names = "--turn-over", paramLabel = "side|head", defaultValue = "side", description = "Over which edge the sheet is turned for its back (default ${DEFAULT-VALUE}, like a page of a book).")
	private TurnEdge turn;

	@Option(names = "--no-code", description = "Prints no code that names the sheet.")
	private boolean noCode;

	@Option(names = "--no-ruler", description = "Prints no line of 100 mm.")
	private boolean noRuler;

	@Option(names = "--steps", description = "Puts the lines to cut into the PDF too, as processing steps (ISO 19593-1); only for presses that know not to print them.")
	private boolean steps;

	@Option(names = "--measured", paramLabel = "X,Y;...", converter = MarkText.PlacesConversion.class, description = "Where the marks of one sheet were measured, in their order: cuts go where the print is.")
	private MarkText.Places measured;

	@Option(names = "--measured-back", paramLabel = "X,Y;...", converter = MarkText.PlacesConversion.class, description = "Where the same marks were measured on its back, with the sheet turned over: work of the back goes where its print is.")
	private MarkText.Places measuredBack;

	@Option(names = "--scan", paramLabel = "PICTURE", description = "Instead, a scan of the printed sheet, in which the marks are looked for; cuts are in mm from its upper left corner.")
	private Path scan;

	@Option(names = "--scan-back", paramLabel = "PICTURE", description = "The same of its back, scanned with the sheet turned over.")
	private Path scanBack;

	@Option(names = "--dpi", paramLabel = "N", description = "Of the scans (default what their files say).")
	private Double dpi;

	@Option(names = "--fit", paramLabel = "FIT", description = "What the sheet may have done: rigid, similarity, affine or projective (default as the sheet says).")
	private FitKind kind;

	@Option(names = "--keep-marks", description = "Keeps proposed marks in the job's file.")
	private boolean keepMarks;

	@Option(names = "--tolerance", paramLabel = "LENGTH", defaultValue = "0.02mm", description = "Greatest deviation of curves (default ${DEFAULT-VALUE}).")
	private Tolerance tolerance;

	@Option(names = "--json", description = "Writes JSON for machines; mm, from the upper left corner of each sheet.")
	private boolean json;

	@Mixin
	private VerbOptions verb = new VerbOptions();

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		side(false).check();
		side(true).check();
		Contribution<Exporter> exporter = exporter();
		PrintOptions options = options();
		Job job = Preparation.load(file);
		Preparation preparation = Preparation.of(job, tolerance);
		List<SheetFaces> faces = new PrintedSheets(file, job, size, only).faces(preparation.prepared(), knockOut, tolerance,
				verb.err());
		List<String> names = names(job, faces);
		List<PrintAndCut> sheets = new ArrayList<>();
		for (SheetFaces each : faces) {
			PrintSheet print = PrintSheet.of(each, options, tolerance, Monitor.NONE);
			sheets.add(PrintAndCut.of(print, fit(print, faces.size(), false), fit(print, faces.size(), true)));
		}
		PrintAndCutReport report = new PrintAndCutReport(options, exporter, preparation.findings());
		write(sheets, names, exporter, report);
		if (keepMarks) {
			keep(job, sheets);
		}
		if (json) {
			verb.out().println(report.json());
		} else {
			report.print(verb.out());
		}
		return sheets.stream().anyMatch(PrintAndCut::isBlocked) ? Status.BLOCKED : preparation.status();
	}

	private Contribution<Exporter> exporter() throws Refusal {
		String ending = format.startsWith(".") ? format.substring(1) : format;
		return Exporters.forFile("." + ending.toLowerCase(Locale.ROOT))
				.orElseThrow(() -> new Refusal("--format: there is no format “" + format + "”; see frisket export --list"));
	}

	private PrintOptions options() throws Refusal {
		Optional<PrinterProfile> profile = printer == null ? Optional.empty() : Optional.of(PrinterChoice.of(printer));
		try {
			return new PrintOptions(bleed == null ? PrintOptions.USUAL_BLEED : bleed, knockOut, turn, !noCode, !noRuler,
					steps, profile);
		} catch (IllegalArgumentException e) {
			throw new Refusal("--bleed: " + e.getMessage());
		}
	}

	private List<String> names(Job job, List<SheetFaces> faces) throws Refusal {
		List<Sheet> own = faces.stream().map(SheetFaces::sheet).filter(job.getSheets()::contains).toList();
		try {
			return new SheetNames(job, "", "").of(NamePattern.parse(NamePattern.USUAL), own);
		} catch (IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	/** @param back whether it is that of the sheet turned over */
	private Optional<Registration> fit(PrintSheet print, int sheets, boolean back) throws Refusal {
		Sheet sheet = print.faces().sheet();
		MeasuredSide side = side(back);
		if (!side.isSaid() && (sheet.getMeasured().isEmpty() || print.proposed())) {
			return Optional.empty();
		}
		MarkPlan plan = plan(print, sheets, side.what());
		try {
			if (side.isSaid()) {
				return Optional.of(side.fit(back ? turn.over(plan) : plan, fitKind(sheet), dpi));
			}
			return back ? SheetMarks.keptBack(sheet, plan, turn) : SheetMarks.kept(sheet, plan);
		} catch (RegisterException e) {
			throw new Refusal(side.what() + e.getMessage());
		}
	}

	private MeasuredSide side(boolean back) {
		return back ? new MeasuredSide("--measured-back", measuredBack, "--scan-back", scanBack)
				: new MeasuredSide("--measured", measured, "--scan", scan);
	}

	private FitKind fitKind(Sheet sheet) {
		return kind == null ? SheetMarks.fitKind(sheet) : kind;
	}

	/** @param what which option asks for them, as the beginning of a refusal; empty for none */
	private static MarkPlan plan(PrintSheet print, int sheets, String what) throws Refusal {
		if (!what.isEmpty() && sheets != 1) {
			throw new Refusal(what + "it is about one sheet; say which with --only");
		}
		return print.plan().orElseThrow(() -> new Refusal(what + "the sheet has no marks"));
	}

	private void write(List<PrintAndCut> sheets, List<String> names, Contribution<Exporter> exporter, PrintAndCutReport report)
			throws Refusal {
		OutputFolder.makeAll(folder);
		List<Path> bases = names.stream().map(folder::resolve).toList();
		try {
			new WholeSet(sheets, bases, exporter).write(settings, new StudioWorkshop(Studio.folder(), machine), RunChoices.plain(),
					tolerance, Monitor.NONE);
		} catch (IOException | ContributionException | RegisterException | IllegalArgumentException e) {
			throw new Refusal(e);
		}
		for (int i = 0; i < sheets.size(); i++) {
			report.add(sheets.get(i), sheets.get(i).targets(bases.get(i), exporter));
		}
	}

	private void keep(Job job, List<PrintAndCut> sheets) throws Refusal {
		for (PrintAndCut each : sheets) {
			PrintSheet print = each.print();
			if (print.proposed() && print.plan().isPresent()) {
				SetMarks edit = new SetMarks(print.faces().sheet(), SheetMarks.toModel(print.plan().get()));
				if (edit.canApply()) {
					edit.apply();
				}
			}
		}
		try {
			JobFile.save(job, file);
		} catch (IOException e) {
			throw new Refusal("--keep-marks: " + e.getMessage());
		}
	}
}
