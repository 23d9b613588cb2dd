package org.frisket.prepare.internal.checks;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
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
import org.frisket.prepare.internal.cures.PictureCures;
import org.frisket.prepare.pictures.PictureSizes;

/** Pictures that are printed so large that their pixels are seen. */
public final class PictureCheck implements Check {

	private static final String ID = "picture-coarse";
	/** What was scaled to the limit is not told for a rounding. */
	private static final double SLACK = 1e-6;

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		job.elements().filter(element -> element.has(OperationKind.PRINT)).forEach(element -> {
			monitor.check();
			double limit = limits.of(element.element()).get(Limit.PICTURE_RESOLUTION);
			element.picture().flatMap(pixels -> PictureSizes.resolution(pixels.image(), (Picture) element.element(),
					element.uncleaned().placement())).filter(dpi -> dpi < limit * (1 - SLACK))
					.ifPresent(dpi -> findings.accept(finding(element, dpi, limit)));
		});
	}

	private static Finding finding(PreparedElement element, double dpi, double limit) {
		return Finding.measured(ID, Severity.CAUTION, element.element().getId(), element.bounds().centre(), dpi, limit,
				Unit.DPI, NLS.bind(Messages.PictureCheck_coarse, Figures.number(dpi, 0)), Messages.PictureCheck_coarseCure);
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? PictureCures.ofCoarse(finding, trial) : List.of();
	}
}
