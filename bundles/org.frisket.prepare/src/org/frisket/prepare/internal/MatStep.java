package org.frisket.prepare.internal;

import java.util.List;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.RegionBoolean;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.geometry.offset.Offsets;
import org.frisket.model.CornerJoin;
import org.frisket.model.HoleRule;
import org.frisket.model.Mat;
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
		Region whole = before.size() == 1 ? before.get(0) : new RegionBoolean().union(before, tolerance, monitor);
		return new Ground(whole, new Offsets(whole, tolerance, parts, curves));
	}

	static Shape shape(Mat mat, Ground ground, Tolerance tolerance, Monitor monitor) {
		if (ground.region().isEmpty()) {
			return Shape.EMPTY;
		}
		Region region = ground.offsets().at(mat.getDistance(), corners(mat), holes(mat), monitor);
		if (mat.getSmoothing() > 0) {
			region = Offset.smoothed(region, mat.getSmoothing(), tolerance, monitor);
		}
		if (region.isEmpty()) {
			return Shape.nothing(new Shape.Remark("mat-vanished", Severity.CAUTION, ground.region().bounds().centre(),
					Messages.MatStep_vanished, Messages.MatStep_vanishedCure));
		}
		return new Shape(region, List.of(), Uncleaned.of(region), List.of());
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
