package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limit;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.cures.SizeCures;

/** Letters that a pen draws so small that its line runs them together. */
public final class PenTextCheck implements Check {

	private static final String ID = "pen-text-small";

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		job.elements().filter(element -> element.has(OperationKind.DRAW) && element.xHeight().isPresent())
				.forEach(element -> {
					double height = element.xHeight().getAsDouble();
					double limit = limits.of(element.element()).get(Limit.PEN_X_HEIGHT);
					if (height < limit) {
						findings.accept(Finding.measured(ID, Severity.CAUTION, element.element().getId(),
								element.bounds().centre(), height, limit,
								NLS.bind(Messages.PenTextCheck_small, Figures.length(height, 2)),
								Messages.PenTextCheck_smallCure));
					}
				});
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? SizeCures.ofSmallText(finding, trial) : List.of();
	}
}
