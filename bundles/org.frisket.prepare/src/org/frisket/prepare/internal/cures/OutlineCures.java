package org.frisket.prepare.internal.cures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.shapes.ChangeMat;
import org.frisket.editing.shapes.ChangePath;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.fit.RegionFitter;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.HoleRule;
import org.frisket.model.Mat;
import org.frisket.prepare.Figures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Limit;
import org.frisket.prepare.checks.Trial;

/** What helps where an outline, or a mat, has more in its contours than a blade can follow. */
public final class OutlineCures {

	/** Of the tolerance: how far simpler curves may stray, and how finely the old ones are looked at. */
	private static final double FIT = 0.6;
	private static final double FLATTENING = 0.15;

	private OutlineCures() {
	}

	/** The outline as it is cut in the end takes the place of the one that was drawn. */
	public static List<Cure> clean(Finding finding, Trial trial) {
		return region(finding, trial, Messages.OutlineCures_clean, Messages.OutlineCures_cleaned, region -> region);
	}

	/** The same way in fewer curves, corners staying corners. */
	public static List<Cure> simpler(Finding finding, Trial trial) {
		record Key(String element) {
		}
		return trial.once(new Key(finding.element()), () -> region(finding, trial, Messages.OutlineCures_simpler,
				Messages.OutlineCures_simplified,
				region -> new RegionFitter(trial.tolerance().share(FIT), FLATTENING * trial.tolerance().mm())
						.fit(Polygons.of(region, FLATTENING * trial.tolerance().mm()), trial.monitor())));
	}

	/** It is filled, or all is made larger. */
	public static List<Cure> ofSmallHole(Finding finding, Trial trial) {
		List<Cure> cures = new ArrayList<>(region(finding, trial, Messages.OutlineCures_fillHole,
				Messages.OutlineCures_holeFilled, region -> new Region(region.pieces().stream().map(piece -> new Piece(
						piece.outer(),
						piece.holes().stream().filter(hole -> !hole.bounds().centre().equals(finding.place())).toList()))
						.toList())));
		cures.addAll(filledMat(finding));
		cures.addAll(LeastSize.cures(finding, trial));
		return cures;
	}

	/** It is left out, or the mat has no holes for it to lie in. */
	public static List<Cure> ofIsland(Finding finding, Trial trial) {
		List<Cure> cures = new ArrayList<>(filledMat(finding));
		SizeCures.leaveOut(finding, trial).ifPresent(cures::add);
		return cures;
	}

	/** Tips are blunted and hollows filled by the offset of the blade. */
	public static List<Cure> ofSharpCorner(Finding finding, Trial trial) {
		double radius = Math.max(trial.limits(finding).get(Limit.BLADE_OFFSET), 4 * trial.tolerance().mm());
		List<Cure> cures = new ArrayList<>(region(finding, trial,
				NLS.bind(Messages.OutlineCures_blunt, Figures.length(radius, 2)), Messages.OutlineCures_blunted,
				region -> Offset.smoothed(region, radius, trial.tolerance(), trial.monitor())));
		cures.add(Cure.of(NLS.bind(Messages.LeastSize_smooth, Figures.length(radius, 2)), finding.element(), Mat.class,
				mat -> ChangeMat.smoothing(List.of(mat), Math.max(mat.getSmoothing(), radius))));
		return cures;
	}

	/** The stock between the sides of a slit is cut away with it no more. */
	static List<Cure> filledSlits(Finding finding, Trial trial) {
		double radius = finding.limit().orElse(0) / 2 + trial.tolerance().mm();
		return region(finding, trial, Messages.OutlineCures_fillSlits, Messages.OutlineCures_slitsFilled,
				region -> Offset.closed(region, radius, trial.tolerance(), trial.monitor()));
	}

	private static List<Cure> filledMat(Finding finding) {
		return List.of(Cure.of(Messages.OutlineCures_fillMat, finding.element(), Mat.class,
				mat -> ChangeMat.holes(List.of(mat), HoleRule.FILL)));
	}

	/** @param change of the region in the job's frame */
	private static List<Cure> region(Finding finding, Trial trial, String name, String edit,
			UnaryOperator<Region> change) {
		Optional<OwnPath> path = OwnPath.of(finding, trial);
		Optional<PreparedElement> prepared = trial.prepared(finding);
		if (path.isEmpty() || prepared.isEmpty()) {
			return List.of();
		}
		Region region = change.apply(prepared.get().region());
		Outline all = region.toOutline().plus(new Outline(prepared.get().lines()));
		if (all.isEmpty()) {
			return List.of();
		}
		String data = OwnPath.data(all.transformed(path.get().transform().inverse()));
		return List.of(Cure.of(name, finding.element(), org.frisket.model.Outline.class,
				outline -> ChangePath.repaired(edit, outline, data)));
	}
}
