package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.SharpCorners;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.Unit;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limit;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.cures.OutlineCures;

/**
 * A tip so sharp that a trailing blade tears it as it comes round; hollows are waste on that side and do not matter. Only corners whose sides are both longer than the
 * blade trails count: along shorter ones it does not come to lie at all.
 */
public final class CornerCheck implements Check {

	private static final String ID = "corner-too-sharp";

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		Worked.cut(job).forEach(element -> {
			monitor.check();
			double limit = limits.of(element.element()).get(Limit.SHARPEST_CORNER);
			double offset = limits.of(element.element()).get(Limit.BLADE_OFFSET);
			for (Contour contour : element.region().contours()) {
				for (SharpCorners.Corner corner : SharpCorners.below(contour, limit, offset)) {
					findings.accept(Finding.measured(ID, Severity.NOTE, element.element().getId(), corner.place(),
							corner.angle(), limit, Unit.DEGREES, NLS.bind(Messages.CornerCheck_sharp,
									Math.round(corner.angle()) + Unit.DEGREES.symbol(), Figures.length(offset, 2)),
							Messages.CornerCheck_sharpCure));
				}
			}
		});
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? OutlineCures.ofSharpCorner(finding, trial) : List.of();
	}
}
