package org.frisket.ui.print.internal.marks;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Point;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.measure.KeptMeasures;
import org.frisket.print.register.RegisterFinding;

/**
 * What was said of the scan that was looked through last; it holds until marks are placed or measured otherwise.
 *
 * @param findings about the marks in it
 * @param words    which scan it was, and how fine
 * @param measured the marks of the sheet after it was taken in
 * @param plan     that was looked for; null for none
 * @param shown    whether the scan is shown under the marks
 */
record ScanNews(List<RegisterFinding> findings, String words, List<Optional<Point>> measured, MarkPlan plan, boolean shown) {

	static final ScanNews NONE = new ScanNews(List.of(), "", List.of(), null, false); //$NON-NLS-1$

	boolean holds(SheetState state) {
		return plan != null && state.plan().filter(plan::equals).isPresent()
				&& KeptMeasures.of(state.sheet(), state.back()).equals(measured);
	}

	ScanNews shown(boolean now) {
		return new ScanNews(findings, words, measured, plan, now);
	}
}
