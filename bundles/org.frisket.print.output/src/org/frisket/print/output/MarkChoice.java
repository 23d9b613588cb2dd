package org.frisket.print.output;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.model.Sheet;
import org.frisket.print.marks.MarkCheck;
import org.frisket.print.marks.MarkDesign;
import org.frisket.print.marks.MarkPlacement;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;

/**
 * Which marks a sheet is to have.
 *
 * @param design how they are drawn, but for the pennant that is always among them
 * @param count  how many
 * @param margin that the printer leaves bare, mm
 */
public record MarkChoice(MarkDesign design, int count, double margin) {

	private static final int USUAL_COUNT = 4;
	/** A usual scan of a whole sheet; common practice, no source. */
	private static final double SCAN_DPI = 300;

	/** What the marks of a sheet are like now, or what is usual where it has none. */
	public static MarkChoice of(Sheet sheet) {
		MarkDesign design = MarkDesign.USUAL;
		if (!sheet.getMarks().isEmpty()) {
			// the first is the pennant
			var like = sheet.getMarks().get(sheet.getMarks().size() - 1);
			try {
				design = new MarkDesign(like.getKind(), like.getSize(), like.getWeight(), like.getQuiet());
			} catch (IllegalArgumentException unfit) {
				design = MarkDesign.USUAL;
			}
		}
		return new MarkChoice(design, sheet.getMarks().isEmpty() ? USUAL_COUNT : sheet.getMarks().size(),
				sheet.getPrintMargin());
	}

	/** @throws RegisterException if there is no room; says for which mark */
	public MarkPlan propose(Sheet sheet, List<PartOnSheet> parts) throws RegisterException {
		return new MarkPlacement(design, count, SheetMarks.GAP).propose(sheet.getWidth(), sheet.getHeight(), margin,
				taken(parts));
	}

	/** What is wrong with marks where they stand. */
	public static List<RegisterFinding> check(MarkPlan plan, List<PartOnSheet> parts) {
		return MarkCheck.of(plan, taken(parts), SheetMarks.GAP, SCAN_DPI);
	}

	private static List<Bounds> taken(List<PartOnSheet> parts) {
		return parts.stream().map(PartOnSheet::taken).filter(box -> !box.isEmpty()).toList();
	}
}
