package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.Overlaps;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.cures.ApartCures;

/**
 * Parts of one layer that overlap, so that the blade goes through both. What lies all within another is a window in it,
 * and what only touches is not meant here.
 */
public final class OverlapCheck implements Check {

	private static final String ID = "parts-overlap";

	@Override
	public boolean looksAround() {
		return true;
	}

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		for (PreparedLayer layer : job.layers()) {
			List<PreparedElement> elements = Worked.cut(layer);
			// taken once: each is compared with all others
			List<Bounds> boxes = elements.stream().map(element -> element.region().bounds()).toList();
			for (int i = 1; i < elements.size(); i++) {
				monitor.check();
				for (int k = 0; k < i; k++) {
					if (boxes.get(i).intersects(boxes.get(k))) {
						monitor.check();
						check(elements.get(i), elements.get(k), tolerance, findings);
					}
				}
			}
		}
	}

	private static void check(PreparedElement element, PreparedElement below, Tolerance tolerance,
			Consumer<Finding> findings) {
		Overlaps.deepest(element.region(), below.region(), tolerance).ifPresent(overlap -> findings.accept(
				Finding.measured(ID, Severity.CAUTION, element.element().getId(), overlap.place(), overlap.mm(),
						tolerance.mm(), NLS.bind(Messages.OverlapCheck_overlap, Figures.length(overlap.mm(), 2)),
						Messages.OverlapCheck_overlapCure)));
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? ApartCures.ofOverlap(finding) : List.of();
	}
}
