package org.frisket.print.output.direct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Length;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.print.marks.Mark;
import org.frisket.print.output.PrintSheet;
import org.frisket.print.output.ScaleRuler;

/** What stands in the way of a sheet on the paper of a printer, before any of it is spent. */
public final class PaperChecks {

	/** How far paper may be off the size of the sheet, mm, for printers count in units of their own. */
	private static final double SLACK = 3;
	/** A share of the shorter side; no printer leaves more bare. A choice of ours. */
	private static final double MOST_BARE = 0.2;

	private PaperChecks() {
	}

	/**
	 * The gravest first. No window system says whether a driver will scale what it is sent; the paper that it reports
	 * tells it at times, and the line of 100 mm always.
	 *
	 * @param back whether it is the back that is printed
	 */
	public static List<Finding> of(PrintSheet sheet, boolean back, PaperPlace place) {
		List<Finding> findings = new ArrayList<>();
		Bounds page = sheet.faces().page();
		reach(sheet, back, place).ifPresent(findings::add);
		Bounds paper = place.paperMm();
		if (Math.abs(paper.width() - page.width()) > SLACK || Math.abs(paper.height() - page.height()) > SLACK) {
			findings.add(finding("other-paper", Severity.CAUTION, sheet, NLS.bind(Messages.PaperChecks_otherPaper,
					size(paper), size(page)), Messages.PaperChecks_otherPaperCure));
		}
		if (sheet.ruler().isEmpty()) {
			findings.add(finding("scale-untold", Severity.CAUTION, sheet, Messages.PaperChecks_untold,
					Messages.PaperChecks_untoldCure));
		}
		return findings;
	}

	/** A mark that is cut off makes the print useless, for no blade finds it; less than that is a matter of the part. */
	private static Optional<Finding> reach(PrintSheet sheet, boolean back, PaperPlace place) {
		Bounds reach = place.printable().grown(place.unit());
		List<Region> marks = PageMarks.of(sheet, back);
		for (int i = 0; i < marks.size(); i++) {
			double over = beyond(marks.get(i).bounds(), reach);
			if (over > 0) {
				return Optional.of(finding("mark-cut-off", Severity.BLOCKING, sheet,
						NLS.bind(Messages.PaperChecks_mark, i + 1, Length.text(over, 1)), markCure(sheet, place)));
			}
		}
		double over = beyond(moved(content(sheet), PageMarks.place(sheet, back)), reach);
		return over > 0 ? Optional.of(finding("print-cut-off", Severity.CAUTION, sheet,
				NLS.bind(Messages.PaperChecks_print, Length.text(over, 1)), Messages.PaperChecks_reachCure)) : Optional.empty();
	}

	/** Window systems give paper margins that the printer may not have; marks may stand further inside as well. */
	private static String markCure(PrintSheet sheet, PaperPlace place) {
		Bounds page = sheet.faces().page();
		Bounds reach = place.printable().grown(place.unit());
		double bare = Math.ceil(Math.max(Math.max(reach.minX(), reach.minY()),
				Math.max(page.maxX() - reach.maxX(), page.maxY() - reach.maxY())));
		// beyond it, the paper is another one
		return bare < MOST_BARE * Math.min(page.width(), page.height())
				? NLS.bind(Messages.PaperChecks_markCure, Length.text(bare, 1)) : Messages.PaperChecks_reachCure;
	}

	/** All that is printed, on the sheet as seen from the front. */
	public static Bounds content(PrintSheet sheet) {
		Bounds content = sheet.bleed();
		for (Mark mark : sheet.plan().map(plan -> plan.marks()).orElse(List.of())) {
			content = content.with(mark.bounds());
		}
		content = content.with(sheet.code().map(code -> code.square()).orElse(Bounds.EMPTY));
		return content.with(sheet.ruler().map(ScaleRuler::bounds).orElse(Bounds.EMPTY));
	}

	private static double beyond(Bounds box, Bounds reach) {
		return box.isEmpty() ? 0 : Math.max(Math.max(reach.minX() - box.minX(), box.maxX() - reach.maxX()),
				Math.max(reach.minY() - box.minY(), box.maxY() - reach.maxY()));
	}

	private static Bounds moved(Bounds box, Transform by) {
		return box.isEmpty() ? box : Bounds.of(by.apply(new Point(box.minX(), box.minY())))
				.with(by.apply(new Point(box.maxX(), box.minY()))).with(by.apply(new Point(box.maxX(), box.maxY())))
				.with(by.apply(new Point(box.minX(), box.maxY())));
	}

	private static String size(Bounds box) {
		return NLS.bind(Messages.PaperChecks_size, Math.round(box.width()), Math.round(box.height()));
	}

	private static Finding finding(String id, Severity severity, PrintSheet sheet, String message, String cure) {
		String element = sheet.faces().sheet().getId();
		return Finding.plain(id, severity, element == null ? "" : element, sheet.faces().page().centre(), message, cure);
	}
}
