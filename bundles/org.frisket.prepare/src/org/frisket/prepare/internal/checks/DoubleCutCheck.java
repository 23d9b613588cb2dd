package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.SharedStretches;
import org.frisket.model.OperationKind;
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
 * The same line worked twice: cut by two elements of a layer, as where neighbours share an edge, or drawn by a pen and cut
 * away. Stretches shorter than a millimetre only touch.
 */
public final class DoubleCutCheck implements Check {

	private static final String TWICE = "cut-twice";
	private static final String DRAWN = "drawn-line-cut";
	private static final double SHORT_MM = 1;

	@Override
	public boolean looksAround() {
		return true;
	}

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		for (PreparedLayer layer : job.layers()) {
			List<PreparedElement> elements = layer.shown();
			// taken once: each is compared with all others
			List<Bounds> boxes = elements.stream().map(PreparedElement::bounds).toList();
			for (int i = 0; i < elements.size(); i++) {
				monitor.check();
				both(elements.get(i), findings);
				Bounds near = boxes.get(i).grown(tolerance.mm());
				for (int k = 0; k < i; k++) {
					if (near.intersects(boxes.get(k))) {
						monitor.check();
						pair(elements.get(i), elements.get(k), tolerance, monitor, findings);
					}
				}
			}
		}
	}

	private static void both(PreparedElement element, Consumer<Finding> findings) {
		if (Worked.isCut(element) && element.has(OperationKind.DRAW) && !element.bounds().isEmpty()) {
			findings.accept(Finding.plain(DRAWN, Severity.CAUTION, element.element().getId(), element.bounds().centre(),
					Messages.DoubleCutCheck_both, Messages.DoubleCutCheck_bothCure));
		}
	}

	private static void pair(PreparedElement one, PreparedElement other, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		if (Worked.isCut(one) && Worked.isCut(other)) {
			shared(one, other, tolerance, monitor).ifPresent(shared -> findings.accept(Finding.measured(TWICE,
					Severity.CAUTION, one.element().getId(), shared.place(), shared.length(), 0,
					NLS.bind(Messages.DoubleCutCheck_twice, Figures.length(shared.length(), 1)),
					Messages.DoubleCutCheck_twiceCure)));
		} else if (Worked.isCut(one) && other.has(OperationKind.DRAW)) {
			drawn(other, one, tolerance, monitor, findings);
		} else if (Worked.isCut(other) && one.has(OperationKind.DRAW)) {
			drawn(one, other, tolerance, monitor, findings);
		}
	}

	private static void drawn(PreparedElement drawn, PreparedElement cut, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		shared(drawn, cut, tolerance, monitor).ifPresent(shared -> findings.accept(Finding.measured(DRAWN,
				Severity.CAUTION, drawn.element().getId(), shared.place(), shared.length(), 0,
				NLS.bind(Messages.DoubleCutCheck_drawn, Figures.length(shared.length(), 1)),
				Messages.DoubleCutCheck_drawnCure)));
	}

	private static Optional<SharedStretches.Shared> shared(PreparedElement one, PreparedElement other,
			Tolerance tolerance, Monitor monitor) {
		return SharedStretches.of(Worked.lines(one), Worked.lines(other), tolerance, monitor)
				.filter(shared -> shared.longest() >= SHORT_MM);
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return TWICE.equals(finding.id()) ? ApartCures.ofDoubleCut(finding, trial)
				: DRAWN.equals(finding.id()) ? ApartCures.ofDrawnCut(finding, trial) : List.of();
	}
}
