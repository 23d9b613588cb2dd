package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.WeedLines;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.cures.OpenContourCures;

/** A contour that is to be cut but stays open: the part would hang on the sheet. */
public final class OpenContourCheck implements Check {

	private static final String ID = "contour-open";

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		// weed lines are in the waste, where nothing has to come free
		Worked.cut(job).filter(element -> !(element.element() instanceof WeedLines))
				.forEach(element -> check(element, tolerance, findings));
	}

	private static void check(PreparedElement element, Tolerance tolerance, Consumer<Finding> findings) {
		for (Contour line : element.lines()) {
			double gap = line.start().distance(line.end());
			findings.accept(Finding.measured(ID, Severity.BLOCKING, element.element().getId(), line.end(),
					gap, tolerance.mm(), NLS.bind(Messages.OpenContourCheck_open, Figures.length(gap, 2)),
					Messages.OpenContourCheck_openCure));
		}
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? OpenContourCures.of(finding, trial) : List.of();
	}
}
