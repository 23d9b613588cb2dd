package org.frisket.editing;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;
import org.frisket.model.CornerJoin;
import org.frisket.model.HoleRule;
import org.frisket.model.Mat;

/** Changes how one or several mats follow what they stand behind. */
public final class ChangeMat extends RecordingEdit {

	private final Set<Mat> mats;
	private final Predicate<Mat> differs;
	private final Consumer<Mat> change;

	private ChangeMat(String name, List<Mat> mats, Predicate<Mat> differs, Consumer<Mat> change) {
		super(name);
		this.mats = new LinkedHashSet<>(mats);
		this.differs = differs;
		this.change = change;
	}

	/** How far they stand outside, in mm; negative makes them smaller than what they follow. */
	public static ChangeMat distance(List<Mat> mats, double distance) {
		return new ChangeMat(Messages.ChangeMat_distance, mats,
				mat -> Double.isFinite(distance) && distance != mat.getDistance(), mat -> mat.setDistance(distance));
	}

	/** How their corners are made. */
	public static ChangeMat corners(List<Mat> mats, CornerJoin corners) {
		return new ChangeMat(Messages.ChangeMat_corners, mats, mat -> corners != null && corners != mat.getCorners(),
				mat -> mat.setCorners(corners));
	}

	/** How far a mitred corner may reach, in distances; at least 1. */
	public static ChangeMat mitreLimit(List<Mat> mats, double limit) {
		return new ChangeMat(Messages.ChangeMat_mitreLimit, mats,
				mat -> Double.isFinite(limit) && limit >= 1 && limit != mat.getMitreLimit(),
				mat -> mat.setMitreLimit(limit));
	}

	/** Whether holes are kept or filled. */
	public static ChangeMat holes(List<Mat> mats, HoleRule holes) {
		return new ChangeMat(Messages.ChangeMat_holes, mats, mat -> holes != null && holes != mat.getHoles(),
				mat -> mat.setHoles(holes));
	}

	/** Radius in mm by which hollows and corners are rounded; 0 for none. */
	public static ChangeMat smoothing(List<Mat> mats, double radius) {
		return new ChangeMat(Messages.ChangeMat_smoothing, mats,
				mat -> Double.isFinite(radius) && radius >= 0 && radius != mat.getSmoothing(),
				mat -> mat.setSmoothing(radius));
	}

	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(mats) && mats.stream().anyMatch(differs);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return mats;
	}

	@Override
	protected void change() {
		mats.stream().filter(differs).forEach(change);
	}
}
