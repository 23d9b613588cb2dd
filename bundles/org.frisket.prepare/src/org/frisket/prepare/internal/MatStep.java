package org.frisket.prepare.internal;

import java.util.List;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.Combining;
import org.frisket.geometry.form.ConvexHull;
import org.frisket.geometry.form.Frame;
import org.frisket.geometry.form.HollowHull;
import org.frisket.geometry.form.RoundedCorners;
import org.frisket.geometry.form.SmallHoles;
import org.frisket.geometry.form.Sweep;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.geometry.offset.Offsets;
import org.frisket.model.CornerJoin;
import org.frisket.model.FrameKind;
import org.frisket.model.HoleRule;
import org.frisket.model.Mat;
import org.frisket.model.MatForm;
import org.frisket.prepare.Severity;
import org.frisket.prepare.Uncleaned;

/** The shape of a mat from the regions that stand before it. */
final class MatStep {

	private MatStep() {
	}

	/** What the mats behind the same elements have in common. */
	record Ground(Region region, Offsets offsets) {
	}

	/** @param before the placed regions of the elements that mats follow */
	static Ground ground(List<Region> before, Memory parts, Memory curves, Tolerance tolerance,
			Monitor monitor) {
		Region whole = Combining.UNITE.of(before, tolerance, monitor);
		return new Ground(whole, new Offsets(whole, tolerance, parts, curves));
	}

	static Shape shape(Mat mat, Ground ground, Tolerance tolerance, Monitor monitor) {
		if (ground.region().isEmpty()) {
			return Shape.EMPTY;
		}
		Region region = form(mat, ground, tolerance, monitor);
		if (mat.getHoles() == HoleRule.FILL_SMALL && mat.getSmallestHole() > 0) {
			region = SmallHoles.filled(region, mat.getSmallestHole(), tolerance, monitor);
		}
		if (mat.getSmoothing() > 0) {
			region = Offset.smoothed(region, mat.getSmoothing(), tolerance, monitor);
		}
		// the corners of a frame are concentric, and have been made so
		if (mat.getCornerRadius() > 0 && mat.getForm() != MatForm.FRAME) {
			region = RoundedCorners.of(region, mat.getCornerRadius(), tolerance, monitor);
		}
		if (region.isEmpty()) {
			return Shape.nothing(new Shape.Remark("mat-vanished", Severity.CAUTION, ground.region().bounds().centre(),
					Messages.MatStep_vanished, Messages.MatStep_vanishedCure));
		}
		return new Shape(region, List.of(), Uncleaned.of(region), List.of());
	}

	private static Region form(Mat mat, Ground ground, Tolerance tolerance, Monitor monitor) {
		return switch (mat.getForm()) {
		case FOLLOW -> moved(mat, ground.offsets(), monitor);
		case CONVEX_HULL -> moved(mat, new Offsets(ConvexHull.of(ground.region(), tolerance, monitor), tolerance), monitor);
		case HOLLOW_HULL -> moved(mat, new Offsets(
				HollowHull.of(ground.region(), Math.max(0, mat.getReach()), tolerance, monitor), tolerance), monitor);
		case SHADOW -> Sweep.of(moved(mat, ground.offsets(), monitor), new Point(mat.getShadowX(), mat.getShadowY()),
				tolerance, monitor);
		case FRAME -> frame(mat, ground.region(), tolerance, monitor);
		};
	}

	private static Region moved(Mat mat, Offsets offsets, Monitor monitor) {
		return offsets.at(mat.getDistance(), corners(mat), holes(mat), monitor);
	}

	/** With its opening filled it is a plate. */
	private static Region frame(Mat mat, Region region, Tolerance tolerance, Monitor monitor) {
		if (!(mat.getFrameWidth() > 0)) {
			return Region.EMPTY;
		}
		Frame frame = new Frame(mat.getFrameKind() == FrameKind.ELLIPSE ? Frame.Kind.ELLIPSE : Frame.Kind.RECTANGLE,
				mat.getFrameMargin() + mat.getDistance(), mat.getFrameWidth(), Math.max(0, mat.getCornerRadius()));
		return mat.getHoles() == HoleRule.FILL ? frame.plate(region, tolerance, monitor)
				: frame.around(region, tolerance, monitor);
	}

	static Shape behindItself() {
		return Shape.nothing(new Shape.Remark("mat-behind-itself", Severity.BLOCKING, Point.ORIGIN,
				Messages.MatStep_behindItself, Messages.MatStep_behindItselfCure));
	}

	private static Corners corners(Mat mat) {
		CornerJoin join = mat.getCorners();
		return switch (join) {
		case ROUND -> Corners.ROUND;
		case BEVEL -> Corners.BEVEL;
		case MITRE -> new Corners.Mitre(mat.getMitreLimit());
		};
	}

	private static Holes holes(Mat mat) {
		return mat.getHoles() == HoleRule.FILL ? Holes.FILL : Holes.KEEP;
	}
}
