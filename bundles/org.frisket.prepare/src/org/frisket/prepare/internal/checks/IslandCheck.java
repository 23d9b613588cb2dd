package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.Islands;
import org.frisket.model.Wording;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.cures.OutlineCures;

/**
 * A piece in the hole of another piece of the same outline or mat: nothing holds it once it is cut. In a wording that is
 * so in letters such as © and is told where its pieces were asked to hang together.
 */
public final class IslandCheck implements Check {

	private static final String ID = "island-falls-out";

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		Worked.cut(job).filter(element -> !(element.element() instanceof Wording)).forEach(element -> {
			for (Piece island : Islands.of(element.region(), tolerance, monitor)) {
				double size = Math.max(island.bounds().width(), island.bounds().height());
				findings.accept(Finding.measured(ID, Severity.NOTE, element.element().getId(), island.bounds().centre(), size,
						0, Messages.IslandCheck_loose, Messages.IslandCheck_looseCure));
			}
		});
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? OutlineCures.ofIsland(finding, trial) : List.of();
	}
}
