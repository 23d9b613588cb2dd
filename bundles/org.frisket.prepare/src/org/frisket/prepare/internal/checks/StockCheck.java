package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.cures.StockCures;

/**
 * A layer that is checked by the limits of card because its stock was not chosen, while others were, or because nothing
 * is known of it. A job in which no stock was chosen at all is not nagged.
 */
public final class StockCheck implements Check {

	private static final String MISSING = "stock-missing";
	private static final String UNKNOWN = "stock-unknown";

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		boolean chosen = job.job().getLayers().stream().anyMatch(layer -> layer.getStock() != null);
		for (PreparedLayer layer : job.layers()) {
			String stock = layer.layer().getStock();
			PreparedElement first = layer.shown().stream().findFirst().orElse(null);
			if (!chosen || first == null) {
				continue;
			}
			if (stock == null) {
				tell(MISSING, first, NLS.bind(Messages.StockCheck_missing, layer.layer().getName()),
						Messages.StockCheck_missingCure, findings);
			} else if (!limits.knows(stock)) {
				tell(UNKNOWN, first, NLS.bind(Messages.StockCheck_unknown, stock), Messages.StockCheck_unknownCure, findings);
			}
		}
	}

	private static void tell(String id, PreparedElement element, String message, String cure,
			Consumer<Finding> findings) {
		findings.accept(Finding.plain(id, Severity.NOTE, element.element().getId(),
				element.bounds().isEmpty() ? Point.ORIGIN : element.bounds().centre(), message, cure));
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return MISSING.equals(finding.id()) || UNKNOWN.equals(finding.id()) ? StockCures.of(finding, trial) : List.of();
	}
}
