package org.frisket.prepare.internal.checks;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.Repair;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.cures.OutlineCures;

/**
 * What cleaning put right in an outline that was drawn or taken in: it crossed, overlapped or touched itself, or had a line twice.
 * Notes only, as the clean outline is what is worked; letters and mats are made so that they may overlap.
 */
public final class CrossingCheck implements Check {

	private static final String CROSSING = "contour-crossing";
	private static final String DOUBLED = "line-doubled";

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		Worked.cut(job).filter(element -> element.element() instanceof org.frisket.model.Outline).forEach(element -> {
			monitor.check();
			Set<Point> told = new HashSet<>();
			for (Repair repair : element.uncleaned().repairs()) {
				Point place = element.uncleaned().placement().apply(repair.place());
				boolean meets = repair.kind() == Repair.Kind.CROSSING_RESOLVED || repair.kind() == Repair.Kind.TOUCH_PARTED;
				if (meets && told.add(place)) {
					findings.accept(Finding.plain(CROSSING, Severity.NOTE, element.element().getId(), place,
							Messages.CrossingCheck_crossing, Messages.CrossingCheck_crossingCure));
				} else if (repair.kind() == Repair.Kind.DUPLICATE_REMOVED) {
					double length = repair.amount() * Math.sqrt(Math.abs(element.uncleaned().placement().determinant()));
					findings.accept(Finding.measured(DOUBLED, Severity.NOTE, element.element().getId(), place, length, 0,
							NLS.bind(Messages.CrossingCheck_doubled, Figures.length(length, 2)),
							Messages.CrossingCheck_doubledCure));
				}
			}
		});
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return CROSSING.equals(finding.id()) || DOUBLED.equals(finding.id()) ? OutlineCures.clean(finding, trial)
				: List.of();
	}
}
