package org.frisket.prepare.internal.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.measure.NarrowGaps;
import org.frisket.geometry.measure.StrokeWidths;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limit;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.ContentCache;
import org.frisket.prepare.internal.cures.ApartCures;
import org.frisket.prepare.internal.cures.SizeCures;

/**
 * Cuts of a layer so near to each other that the stock between them tears: two pieces, or the sides of a slit in one.
 * What narrows to a point, as between the arms of a V, is none.
 */
public final class GapCheck implements Check {

	private static final String ID = "gap-too-narrow";
	private static final String SLIT = "slit-too-narrow";
	private static final ContentCache KNOWN = new ContentCache(2000);

	@Override
	public boolean looksAround() {
		return true;
	}

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		for (PreparedLayer layer : job.layers()) {
			double limit = limits.of(layer.layer()).get(Limit.NARROWEST_GAP);
			if (limit <= tolerance.mm()) {
				continue;
			}
			List<Piece> pieces = new ArrayList<>();
			List<PreparedElement> owners = new ArrayList<>();
			for (PreparedElement element : Worked.cut(layer)) {
				for (Piece piece : element.region().pieces()) {
					pieces.add(piece);
					owners.add(element);
				}
			}
			for (NarrowGaps.Between gap : NarrowGaps.between(pieces, limit, tolerance, KNOWN::get, monitor)) {
				findings.accept(Finding.measured(ID, Severity.CAUTION, owners.get(gap.other()).element().getId(), gap.place(), gap.mm(), limit,
						NLS.bind(Messages.GapCheck_narrow, Figures.length(gap.mm(), 2)), Messages.GapCheck_narrowCure));
			}
			for (int i = 0; i < pieces.size(); i++) {
				monitor.check();
				for (StrokeWidths.Width slit : NarrowGaps.slits(pieces.get(i), limit, tolerance, KNOWN::get, monitor)) {
					findings.accept(Finding.measured(SLIT, Worked.ofWaste(owners.get(i)), owners.get(i).element().getId(), slit.place(), slit.mm(), limit,
							NLS.bind(Messages.GapCheck_slit, Figures.length(slit.mm(), 2)), Messages.GapCheck_slitCure));
				}
			}
		}
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? ApartCures.ofGap(finding, trial)
				: SLIT.equals(finding.id()) ? SizeCures.ofSlit(finding, trial) : List.of();
	}
}
