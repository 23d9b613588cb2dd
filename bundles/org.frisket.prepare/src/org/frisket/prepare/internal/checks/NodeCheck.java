package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
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
 * Nodes that follow each other more closely than a machine steps, or more of them than a curve needs: it stutters along
 * them. Only of outlines that were drawn or taken in; the nodes of letters and mats are nobody's to mend.
 */
public final class NodeCheck implements Check {

	private static final String CLOSE = "nodes-too-close";
	private static final String MANY = "nodes-too-many";
	/** A small shape may have as many nodes as it likes. */
	private static final int FEW = 24;

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		job.elements().filter(element -> element.element() instanceof org.frisket.model.Outline
				&& !element.operations().isEmpty()).forEach(element -> {
					monitor.check();
					close(element, limits.of(element.element()).get(Limit.NODE_STEP), findings);
					many(element, limits.of(element.element()).get(Limit.NODES_PER_MM), findings);
				});
	}

	private static void close(PreparedElement element, double limit, Consumer<Finding> findings) {
		int count = 0;
		Segment shortest = null;
		double least = limit;
		for (Contour contour : Worked.lines(element)) {
			for (Segment segment : contour.segments()) {
				double length = segment.start().distance(segment.end());
				if (length < limit && segment.length() < limit) {
					count++;
					if (length < least) {
						least = length;
						shortest = segment;
					}
				}
			}
		}
		if (shortest != null) {
			findings.accept(Finding.measured(CLOSE, Severity.NOTE, element.element().getId(), shortest.start(), least, limit,
					NLS.bind(Messages.NodeCheck_close, count, Figures.length(least, 3)), Messages.NodeCheck_closeCure));
		}
	}

	private static void many(PreparedElement element, double limit, Consumer<Finding> findings) {
		Contour worst = null;
		double most = limit;
		for (Contour contour : Worked.lines(element)) {
			if (contour.nodeCount() >= FEW && contour.nodeCount() > most * contour.length()) {
				most = contour.nodeCount() / contour.length();
				worst = contour;
			}
		}
		if (worst != null) {
			findings.accept(Finding.measured(MANY, Severity.NOTE, element.element().getId(), worst.start(), most, limit,
					Unit.PER_MM, NLS.bind(Messages.NodeCheck_many, Math.round(most)), Messages.NodeCheck_manyCure));
		}
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return CLOSE.equals(finding.id()) || MANY.equals(finding.id()) ? OutlineCures.simpler(finding, trial) : List.of();
	}
}
