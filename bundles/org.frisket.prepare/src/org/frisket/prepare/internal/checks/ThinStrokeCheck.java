package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.StrokeWidths;
import org.frisket.geometry.measure.ThinStrokes;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.ContentCache;
import org.frisket.prepare.internal.cures.SizeCures;

/** A stroke thinner than stock and blade allow, by true local thickness. */
public final class ThinStrokeCheck implements Check {

	private static final String ID = "stroke-too-thin";
	/** The dearest of all checks, and most pieces are as they were when it was made last. */
	private static final ContentCache KNOWN = new ContentCache(2000);

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		Worked.cut(job).forEach(element -> {
			monitor.check();
			check(element, limits.of(element.element()).thinnestStroke(), tolerance, monitor, findings);
		});
	}

	private static void check(PreparedElement element, double limit, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		for (StrokeWidths.Width thin : ThinStrokes.of(element.region(), limit, tolerance, KNOWN::get, monitor)) {
			findings.accept(Finding.measured(ID, Severity.CAUTION, element.element().getId(),
					thin.place(), thin.mm(), limit,
					NLS.bind(Messages.ThinStrokeCheck_thin, Figures.length(thin.mm(), 2)),
					Messages.ThinStrokeCheck_thinCure));
		}
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? SizeCures.ofThinStroke(finding, trial) : List.of();
	}
}
