package org.frisket.editing.shapes;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.ObjDoubleConsumer;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.CornerJoin;
import org.frisket.model.FrameKind;
import org.frisket.model.HoleRule;
import org.frisket.model.Mat;
import org.frisket.model.MatForm;

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

	/** What shape they make of what they follow. */
	public static ChangeMat form(List<Mat> mats, MatForm form) {
		return new ChangeMat(Messages.ChangeMat_form, mats, mat -> form != null && form != mat.getForm(),
				mat -> mat.setForm(form));
	}

	/** The widest mouth in mm that a hollow hull bridges; 0 only fills holes. */
	public static ChangeMat reach(List<Mat> mats, double reach) {
		return number(Messages.ChangeMat_reach, mats, reach, reach >= 0, Mat::getReach, Mat::setReach);
	}

	/** How far a shadow falls, in mm to the right and down. */
	public static ChangeMat shadow(List<Mat> mats, double dx, double dy) {
		return new ChangeMat(Messages.ChangeMat_shadow, mats,
				mat -> Double.isFinite(dx + dy) && (dx != mat.getShadowX() || dy != mat.getShadowY()), mat -> {
					mat.setShadowX(dx);
					mat.setShadowY(dy);
				});
	}

	/** What a frame follows. */
	public static ChangeMat frameKind(List<Mat> mats, FrameKind kind) {
		return new ChangeMat(Messages.ChangeMat_frame, mats, mat -> kind != null && kind != mat.getFrameKind(),
				mat -> mat.setFrameKind(kind));
	}

	/** From the box about the elements out to a frame's inner edge, in mm. */
	public static ChangeMat frameMargin(List<Mat> mats, double margin) {
		return number(Messages.ChangeMat_frameMargin, mats, margin, true, Mat::getFrameMargin, Mat::setFrameMargin);
	}

	/** Of a frame, in mm; above 0. */
	public static ChangeMat frameWidth(List<Mat> mats, double width) {
		return number(Messages.ChangeMat_frameWidth, mats, width, width > 0, Mat::getFrameWidth, Mat::setFrameWidth);
	}

	/** Where small holes are filled: the diameter in mm of a disc that has room in those that stay; above 0. */
	public static ChangeMat smallestHole(List<Mat> mats, double size) {
		return number(Messages.ChangeMat_smallestHole, mats, size, size > 0, Mat::getSmallestHole,
				Mat::setSmallestHole);
	}

	private static ChangeMat number(String name, List<Mat> mats, double value, boolean valid,
			ToDoubleFunction<Mat> now, ObjDoubleConsumer<Mat> set) {
		return new ChangeMat(name, mats, mat -> valid && Double.isFinite(value) && value != now.applyAsDouble(mat),
				mat -> set.accept(mat, value));
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
