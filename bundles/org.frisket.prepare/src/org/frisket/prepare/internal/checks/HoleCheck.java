package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.Measures;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.ContentCache;
import org.frisket.prepare.internal.cures.OutlineCures;

/** A hole so small that what is cut out of it tears instead of coming out. */
public final class HoleCheck implements Check {

	private static final String ID = "hole-too-small";
	private static final ContentCache KNOWN = new ContentCache(2000);

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		Worked.cut(job).forEach(element -> {
			double limit = limits.of(element.element()).smallestHole();
			for (Piece piece : element.region().pieces()) {
				for (Contour hole : piece.holes()) {
					monitor.check();
					double width = Measures.holeWidth(hole, limit, tolerance, KNOWN::get, monitor);
					if (width < limit) {
						findings.accept(Finding.measured(ID, Worked.ofWaste(element), element.element().getId(),
								hole.bounds().centre(), width, limit,
								NLS.bind(Messages.HoleCheck_small, Figures.length(width, 2)), Messages.HoleCheck_smallCure));
					}
				}
			}
		});
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? OutlineCures.ofSmallHole(finding, trial) : List.of();
	}
}
