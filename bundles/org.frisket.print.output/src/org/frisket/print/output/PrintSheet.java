package org.frisket.print.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Length;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.prepare.Unit;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkCheck;
import org.frisket.print.marks.MarkDesign;
import org.frisket.print.marks.MarkPlacement;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.marks.SheetCode;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;

/**
 * What is printed on a sheet, seen from the front, in mm from its upper left corner.
 *
 * @param faces    whose print it is
 * @param options  it was made with
 * @param front    in the order of printing
 * @param back     the same of the back
 * @param plan     of its register marks; empty if nothing is printed, or there is no room for any
 * @param proposed whether the marks are none that the job keeps
 * @param code     that names the sheet, and the square it fills
 * @param ruler    to measure
 * @param trim     what comes off the sheet
 * @param bleed    the same with all that is printed beyond it
 * @param findings of art, marks, code and ruler
 */
public record PrintSheet(SheetFaces faces, PrintOptions options, List<PrintedArt> front, List<PrintedArt> back,
		Optional<MarkPlan> plan, boolean proposed, Optional<PlacedCode> code, Optional<ScaleRuler> ruler, Bounds trim,
		Bounds bleed, List<Finding> findings) {

	/** With modules of about 0.4 mm; what most cameras read, common practice, no source. */
	private static final double CODE_SIDE = 16;
	/** A usual scan of a whole sheet. */
	private static final double SCAN_DPI = 300;

	/** A code where it stands. */
	public record PlacedCode(SheetCode code, Bounds square) {
	}

	public PrintSheet {
		front = List.copyOf(front);
		back = List.copyOf(back);
		findings = List.copyOf(findings);
	}

	/**
	 * Marks that the sheet has stay as they are; otherwise some are proposed.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static PrintSheet of(SheetFaces faces, PrintOptions options, Tolerance tolerance, Monitor monitor) {
		return new Making(faces, options).make(tolerance, monitor);
	}

	/** The same as people see it once it is printed: without what is undone for a printer, and without steps. */
	public PrintSheet asSeen() {
		PrintOptions seen = new PrintOptions(options.bleed(), options.knockOut(), options.turn(), options.code(), options.ruler(),
				false, Optional.empty());
		return new PrintSheet(faces, seen, front, back, plan, proposed, code, ruler, trim, bleed, findings);
	}

	public boolean isPrinted() {
		return !front.isEmpty() || !back.isEmpty();
	}

	/** The way from a sheet to its print, with what is noticed on it. */
	private static final class Making {

		private final SheetFaces faces;
		private final PrintOptions options;
		private final List<Finding> findings = new ArrayList<>();

		Making(SheetFaces faces, PrintOptions options) {
			this.faces = faces;
			this.options = options;
		}

		PrintSheet make(Tolerance tolerance, Monitor monitor) {
			Optional<MarkPlan> kept = kept();
			List<Bounds> quiet = kept.map(Making::quiet).orElse(List.of());
			ArtMaker maker = new ArtMaker(faces, options, quiet, tolerance, monitor);
			List<PrintedArt> front = maker.of(false);
			List<PrintedArt> back = maker.of(true);
			maker.shortened().forEach(part -> shortened(part, options.bleed()));
			Bounds page = faces.page();
			Bounds trim = within(Stream.concat(faces.items(false).stream(), faces.items(true).stream())
					.filter(item -> !item.worked().isEmpty()).map(item -> item.element().bounds()).reduce(Bounds.EMPTY, Bounds::with), page);
			Bounds bleed = within(Stream.concat(front.stream(), back.stream()).map(PrintedArt::bounds)
					.reduce(trim, Bounds::with), page);
			if (front.isEmpty() && back.isEmpty()) {
				note("nothing-printed", Severity.NOTE, Messages.PrintSheet_nothing, Messages.PrintSheet_nothingCure);
				return new PrintSheet(faces, options, front, back, kept, false, Optional.empty(), Optional.empty(), trim,
						bleed, findings);
			}
			findings.addAll(PixelArt.findings(id(), Stream.concat(front.stream(), back.stream()).toList(), monitor));
			List<Bounds> taken = taken(front, back);
			Optional<MarkPlan> plan = kept.isPresent() ? kept : proposed(taken);
			plan.ifPresent(marks -> MarkCheck.of(marks, taken, SheetMarks.GAP, SCAN_DPI).forEach(this::take));
			Optional<PlacedCode> code = options.code() && plan.isPresent() ? code(plan.get(), taken) : Optional.empty();
			Optional<ScaleRuler> ruler = options.ruler() ? ruler(plan, code, taken) : Optional.empty();
			return new PrintSheet(faces, options, front, back, plan, kept.isEmpty(), code, ruler, trim.isEmpty() ? bleed : trim,
					bleed, findings);
		}

		private Optional<MarkPlan> kept() {
			try {
				return SheetMarks.plan(faces.sheet());
			} catch (RegisterException e) {
				note("marks-unfit", Severity.BLOCKING, e.getMessage(), Messages.PrintSheet_marksCure);
				return Optional.empty();
			}
		}

		private Optional<MarkPlan> proposed(List<Bounds> taken) {
			try {
				return Optional.of(SheetMarks.propose(faces.sheet(), taken));
			} catch (RegisterException e) {
				note("marks-no-room", Severity.BLOCKING, e.getMessage(), Messages.PrintSheet_marksCure);
				return Optional.empty();
			}
		}

		private Optional<PlacedCode> code(MarkPlan plan, List<Bounds> taken) {
			String job = faces.job().getNumber();
			if (job == null || !job.matches("[1-9][0-9]{0,17}")) {
				note("code-no-number", Severity.NOTE, Messages.PrintSheet_noNumber, Messages.PrintSheet_noNumberCure);
				return Optional.empty();
			}
			try {
				Bounds square = new MarkPlacement(MarkDesign.USUAL, plan.marks().size(), SheetMarks.GAP).codeRoom(plan, CODE_SIDE, taken);
				return Optional.of(new PlacedCode(new SheetCode(Long.parseLong(job), faces.number()), square));
			} catch (RegisterException e) {
				note("code-no-room", Severity.NOTE, e.getMessage(), Messages.PrintSheet_roomCure);
				return Optional.empty();
			}
		}

		private Optional<ScaleRuler> ruler(Optional<MarkPlan> plan, Optional<PlacedCode> code, List<Bounds> taken) {
			List<Bounds> full = new ArrayList<>(taken);
			plan.ifPresent(marks -> full.addAll(quiet(marks)));
			code.ifPresent(each -> full.add(each.square()));
			Bounds printable = faces.page().grown(-faces.sheet().getPrintMargin());
			Optional<ScaleRuler> ruler = ScaleRuler.place(printable, box -> full.stream().noneMatch(box::intersects));
			if (ruler.isEmpty()) {
				note("ruler-no-room", Severity.NOTE, Messages.PrintSheet_noRuler, Messages.PrintSheet_roomCure);
			}
			return ruler;
		}

		private void shortened(int part, double bleed) {
			Point place = faces.room(part).map(room -> room.bounds().centre()).orElse(faces.page().centre());
			findings.add(Finding.plain("bleed-short", Severity.CAUTION, id(), place, Messages.PrintSheet_short,
					NLS.bind(Messages.PrintSheet_shortCure, Length.text(bleed, 1))));
		}

		private static List<Bounds> quiet(MarkPlan plan) {
			return plan.marks().stream().map(Making::quiet).toList();
		}

		private static Bounds quiet(Mark mark) {
			return mark.bounds().grown(mark.design().quiet());
		}

		/** Each part by itself, for marks may stand between them; so much room as its print takes up. */
		private List<Bounds> taken(List<PrintedArt> front, List<PrintedArt> back) {
			List<Bounds> taken = new ArrayList<>();
			Stream.concat(faces.items(false).stream(), faces.items(true).stream())
					.filter(item -> !item.worked().isEmpty()).forEach(item -> taken.add(item.element().bounds()));
			Stream.concat(front.stream(), back.stream()).forEach(art -> taken.add(art.bounds()));
			taken.removeIf(Bounds::isEmpty);
			return taken;
		}

		private static Bounds within(Bounds box, Bounds page) {
			return box.isEmpty() || !box.intersects(page) ? Bounds.EMPTY
					: new Bounds(Math.max(box.minX(), page.minX()), Math.max(box.minY(), page.minY()),
							Math.min(box.maxX(), page.maxX()), Math.min(box.maxY(), page.maxY()));
		}

		private void take(RegisterFinding finding) {
			findings.add(new Finding(finding.id(), severity(finding), id(), finding.place(), finding.measured(), finding.limit(),
					Unit.MM, 0, finding.message(), finding.cure()));
		}

		private static Severity severity(RegisterFinding finding) {
			return switch (finding.severity()) {
			case BLOCKING -> Severity.BLOCKING;
			case CAUTION -> Severity.CAUTION;
			case NOTE -> Severity.NOTE;
			};
		}

		private void note(String id, Severity severity, String message, String cure) {
			findings.add(Finding.plain(id, severity, id(), faces.page().centre(), message, cure));
		}

		private String id() {
			return faces.sheet().getId() == null ? "" : faces.sheet().getId();
		}
	}
}
