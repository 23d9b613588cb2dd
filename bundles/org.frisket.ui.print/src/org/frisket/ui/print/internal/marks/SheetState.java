package org.frisket.ui.print.internal.marks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.frisket.model.Sheet;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.measure.KeptMeasures;
import org.frisket.print.measure.MeasuredSheet;
import org.frisket.print.output.MarkChoice;
import org.frisket.print.output.PartOnSheet;
import org.frisket.print.output.SheetMarks;
import org.frisket.print.output.SheetParts;
import org.frisket.print.output.TurnEdge;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;

/**
 * What is known of the marks on one side of a sheet.
 *
 * @param sheet    itself
 * @param back     whether it is its back, with the sheet turned over
 * @param parts    that lie on it, as far as they are worked out
 * @param measured its marks with what was measured; empty if it has none that are a plan
 * @param trouble  why its marks are no plan, for people; empty if they are, or there are none
 * @param checks   what is wrong with the marks where they stand
 */
record SheetState(Sheet sheet, boolean back, List<PartOnSheet> parts, Optional<MeasuredSheet> measured, String trouble,
		List<RegisterFinding> checks) {

	static SheetState of(Sheet sheet, SheetParts all) {
		return of(sheet, false, all.parts(), TurnEdge.SIDE);
	}

	/** @param turn how the sheet is turned over */
	static SheetState ofBack(Sheet sheet, SheetParts all, TurnEdge turn) {
		return of(sheet, true, all.over(turn, sheet), turn);
	}

	private static SheetState of(Sheet sheet, boolean back, List<PartOnSheet> parts, TurnEdge turn) {
		try {
			Optional<MarkPlan> plan = SheetMarks.plan(sheet).map(each -> back ? turn.over(each) : each);
			Optional<MeasuredSheet> measured = plan
					.map(each -> MeasuredSheet.of(each, SheetMarks.fitKind(sheet), KeptMeasures.of(sheet, back)));
			return new SheetState(sheet, back, parts, measured, "", //$NON-NLS-1$
					plan.map(each -> MarkChoice.check(each, parts)).orElse(List.of()));
		} catch (RegisterException e) {
			return new SheetState(sheet, back, parts, Optional.empty(), e.getMessage(), List.of());
		}
	}

	Optional<MarkPlan> plan() {
		return measured.map(MeasuredSheet::plan);
	}

	/** Where the marks stand, then what the fit says; the gravest first. */
	List<RegisterFinding> findings() {
		List<RegisterFinding> findings = new ArrayList<>(checks);
		measured.ifPresent(each -> findings.addAll(each.findings()));
		findings.sort(Comparator.comparing(RegisterFinding::severity));
		return findings;
	}
}
