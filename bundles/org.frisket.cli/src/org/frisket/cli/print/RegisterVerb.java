package org.frisket.cli.print;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbOptions;
import org.frisket.geometry.Point;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.MeasuredLengths;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.PrinterProfiles;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.Registration;
import org.frisket.studio.Studio;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** From designed to measured marks. */
@Command(name = "register", description = "Tells how a printed sheet lies from its register marks as designed and as measured. Lengths without a unit are mm.", sortOptions = false)
public final class RegisterVerb implements Callable<Integer> {

	@Option(names = "--design", paramLabel = "X,Y;...", converter = MarkText.PlacesConversion.class, description = "Where the marks are in the design, such as \"10,10;290,10;290,190;10,190\".")
	private MarkText.Places design;

	@Option(names = "--sheet", paramLabel = "JOB#SHEET", description = "Instead, a sheet of a job that keeps marks, such as tags.frjob#2; the first if no number is given.")
	private String sheet;

	@Option(names = "--measured", paramLabel = "X,Y;...", converter = MarkText.PlacesConversion.class, description = "Where they were measured, in the same order.")
	private MarkText.Places measured;

	@Option(names = "--lengths", paramLabel = "A-B=LENGTH;...", converter = MarkText.LengthsConversion.class, description = "Instead, how far they are apart, such as \"1-2=280.4;1-3=333.1\"; four marks have six lengths, of which five are needed.")
	private MarkText.Lengths lengths;

	@Option(names = "--scan", paramLabel = "PICTURE", description = "Instead, a scan in which they are looked for; places are in mm from its upper left corner. Of marks given by --design the first is a pennant and the others are discs of 5mm.")
	private Path scan;

	@Option(names = "--dpi", paramLabel = "N", description = "Of the scan (default what its file says).")
	private Double dpi;

	@Option(names = "--fit", paramLabel = "FIT", defaultValue = "similarity", description = "What the sheet may have done: rigid (moved, turned), similarity (scaled too), affine (stretched and skewed too) or projective (seen from aslant); default ${DEFAULT-VALUE}.")
	private FitKind kind;

	@Option(names = "--at", paramLabel = "X,Y;...", converter = MarkText.PlacesConversion.class, description = "Places of the design to map, each with its standard error.")
	private MarkText.Places at;

	@Option(names = "--sigma", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Standard error of a measured coordinate, such as 0.1mm (default as the residuals show it).")
	private Double sigma;

	@Option(names = "--keep-printer", paramLabel = "NAME", description = "Keeps scale and skew under this name in the studio, for what is printed on that printer; takes an affine fit.")
	private String printer;

	@Option(names = "--json", description = "Writes JSON for machines; mm and degrees, the matrix row by row.")
	private boolean json;

	@Mixin
	private VerbOptions verb = new VerbOptions();

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		if ((design == null) == (sheet == null)) {
			throw new Refusal("say which marks, either by --design or by --sheet");
		}
		if ((measured == null ? 0 : 1) + (lengths == null ? 0 : 1) + (scan == null ? 0 : 1) != 1) {
			throw new Refusal("say what was measured, either by --measured or by --lengths, or give a --scan");
		}
		Optional<MarkPlan> plan = sheet == null ? Optional.empty() : Optional.of(MarkedSheet.ofJob(sheet));
		List<Point> marks = plan.isPresent() ? plan.get().places() : design.points();
		RegisterReport report;
		try {
			Optional<MeasuredLengths> found = lengths == null ? Optional.empty()
					: Optional.of(MeasuredLengths.of(marks, lengths.lengths()));
			Optional<ScanFile> scanned = scan == null ? Optional.empty()
					: Optional.of(ScanFile.of("--scan", scan, dpi, plan.isPresent() ? plan.get() : MarkedSheet.usual(marks)));
			Registration fit = scanned.isPresent() ? scanned.get().registration(kind)
					: Registration.fit(kind, marks, found.map(MeasuredLengths::places).orElseGet(() -> measured.points()));
			Optional<PrinterProfile> profile = printer == null ? Optional.empty()
					: Optional.of(PrinterProfile.of(printer, fit, LocalDate.now()));
			report = new RegisterReport(fit, found, at == null ? List.<Point>of() : at.points(),
					sigma == null ? fit.sigma() : OptionalDouble.of(sigma), profile,
					scanned.map(each -> each.found().findings()).orElse(List.of()));
		} catch (RegisterException e) {
			throw new Refusal(e);
		}
		if (report.printer().isPresent()) {
			keep(report.printer().get());
		}
		if (json) {
			verb.out().println(Json.text(report.json()));
		} else {
			report.print(verb.out());
		}
		return report.fit().isBlocked() ? Status.BLOCKED : Status.DONE;
	}

	private static void keep(PrinterProfile profile) throws Refusal {
		try {
			new PrinterProfiles(Studio.folder().openForWriting().preferences()).keep(profile);
		} catch (IOException e) {
			throw new Refusal("--keep-printer: " + e.getMessage());
		}
	}
}
