package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.Measures;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.cures.SizeCures;

/** A piece shorter than can be held while it is cut and picked afterwards. */
public final class SmallPieceCheck implements Check {

	private static final String ID = "piece-too-small";

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		Worked.cut(job).forEach(element -> {
			monitor.check();
			check(element, limits.of(element.element()).smallestPiece(), tolerance, findings);
		});
	}

	private static void check(PreparedElement element, double limit, Tolerance tolerance, Consumer<Finding> findings) {
		for (Piece piece : element.region().pieces()) {
			double length = Measures.smallestBox(piece, tolerance).wide();
			if (length < limit) {
				findings.accept(Finding.measured(ID, Severity.CAUTION, element.element().getId(),
						piece.bounds().centre(), length, limit,
						NLS.bind(Messages.SmallPieceCheck_small, Figures.length(length, 2)),
						Messages.SmallPieceCheck_smallCure));
			}
		}
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? SizeCures.ofSmallPiece(finding, trial) : List.of();
	}
}
