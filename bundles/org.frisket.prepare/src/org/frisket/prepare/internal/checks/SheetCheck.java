package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Length;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.Measures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limit;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.cures.SizeCures;

/**
 * A piece that goes on no sheet of its stock, less the margins, however it is turned. A job does not say yet where its
 * parts lie on a sheet, so that only their size can be checked; and only where the studio has said how large the sheets
 * are.
 */
public final class SheetCheck implements Check {

	private static final String ID = "piece-too-large";

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		Worked.cut(job).forEach(element -> {
			monitor.check();
			Limits allowed = limits.of(element.element());
			double margins = 2 * allowed.get(Limit.SHEET_MARGIN);
			double one = allowed.get(Limit.SHEET_WIDTH);
			double other = allowed.get(Limit.SHEET_HEIGHT);
			if (one > 0 && other > 0) {
				check(element, Math.max(0, Math.min(one, other) - margins), Math.max(0, Math.max(one, other) - margins),
						tolerance, findings);
			}
		});
	}

	private static void check(PreparedElement element, double narrow, double wide, Tolerance tolerance,
			Consumer<Finding> findings) {
		for (Piece piece : element.region().pieces()) {
			double width = piece.bounds().width();
			double height = piece.bounds().height();
			if (Math.min(width, height) <= narrow && Math.max(width, height) <= wide) {
				continue;
			}
			Measures.Box box = Measures.smallestBox(piece, tolerance);
			if (box.narrow() > narrow || box.wide() > wide) {
				boolean long_ = box.wide() > wide;
				double measured = long_ ? box.wide() : box.narrow();
				findings.accept(Finding.measured(ID, Severity.CAUTION, element.element().getId(), piece.bounds().centre(),
						measured, long_ ? wide : narrow, NLS.bind(Messages.SheetCheck_large, Length.text(measured, 1)),
						Messages.SheetCheck_largeCure));
			}
		}
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? SizeCures.ofLargePiece(finding, trial) : List.of();
	}
}
