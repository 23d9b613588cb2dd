package org.frisket.ui.bench.internal.grips;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.geometry.snap.SnapResult;

/**
 * How much larger a box becomes when a grip of it is dragged. A corner keeps the ratio of the sides and the middle of a
 * side changes one of them; the other way round if so asked.
 *
 * @param sx    factor across
 * @param sy    factor down
 * @param fixed what stays in its place, in mm
 */
public record Scaling(double sx, double sy, Point fixed) {

	/**
	 * @param dx      by how much the grip was dragged to the right, in mm
	 * @param dy      by how much down
	 * @param turned  whether a corner is to free the ratio, and a side to keep it
	 * @param centred whether the middle of the box stays, instead of the place across from the grip
	 * @param step    sizes come out as multiples of it, and no smaller than it, in mm
	 */
	public static Scaling of(Bounds box, Grip grip, double dx, double dy, boolean turned, boolean centred, double step) {
		Point fixed = centred ? box.centre() : grip.across(box);
		double reach = centred ? 2 : 1;
		double width = box.width() + grip.across() * dx * reach;
		double height = box.height() + grip.down() * dy * reach;
		boolean keepsRatio = grip.isCorner() != turned;
		if (!keepsRatio) {
			return new Scaling(factor(box.width(), width, step), factor(box.height(), height, step), fixed);
		}
		if (grip.across() != 0 && grip.down() != 0) {
			// the point of the diagonal that is nearest to the pointer
			double square = box.width() * box.width() + box.height() * box.height();
			double along = (width * box.width() + height * box.height()) / square;
			width = along * box.width();
			height = along * box.height();
		}
		boolean byWidth = grip.down() == 0 || grip.across() != 0 && box.width() >= box.height();
		double factor = byWidth ? factor(box.width(), width, step) : factor(box.height(), height, step);
		return new Scaling(factor, factor, fixed);
	}

	/**
	 * The scaling that brings the grip exactly onto what holds it; this one where nothing does. Where the ratio is kept,
	 * the nearer of two lines holds.
	 *
	 * @param place     of the grip before the drag, in mm
	 * @param keptRatio whether both factors are to stay equal
	 */
	public Scaling held(SnapResult held, Point place, boolean keptRatio) {
		double toX = held.x().map(hold -> (hold.line().at() - fixed.x()) / (place.x() - fixed.x())).orElse(sx);
		double toY = held.y().map(hold -> (hold.line().at() - fixed.y()) / (place.y() - fixed.y())).orElse(sy);
		if (!held.isHeld() || toX <= 0 || toY <= 0) {
			return this;
		}
		if (!keptRatio) {
			return new Scaling(toX, toY, fixed);
		}
		boolean byX = held.y().isEmpty() || held.x().isPresent() && Math.abs(held.dx()) <= Math.abs(held.dy());
		double factor = byX ? toX : toY;
		return new Scaling(factor, factor, fixed);
	}

	private static double factor(double from, double to, double step) {
		// a line has no second size that could change
		return from <= 0 ? 1 : Math.max(step, Math.round(to / step) * step) / from;
	}

	/** The map that does it. */
	public Transform transform() {
		return new Transform(sx, 0, 0, sy, fixed.x() - sx * fixed.x(), fixed.y() - sy * fixed.y());
	}
}
