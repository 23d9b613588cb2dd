package org.frisket.editing.wording;

import java.util.function.Consumer;
import java.util.function.Predicate;

import org.frisket.model.Flow;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.model.Outline;
import org.frisket.model.Wording;

/** Changes what the lines of a wording run along, and how. Lengths are in mm, angles in degrees. */
public final class ChangeFlow extends WordingEdit {

	private ChangeFlow(String name, Wording wording, Predicate<Wording> differs, Consumer<Wording> change) {
		super(name, wording, differs, change);
	}

	/**
	 * Lets the lines run along something else, where the wording then lies.
	 *
	 * @param place the transform of the wording from then on
	 */
	public static ChangeFlow to(Wording wording, Flow flow, Matrix place) {
		return new ChangeFlow(Messages.ChangeFlow_flow, wording, w -> flow != null && flow != w.getFlow(), w -> {
			w.setFlow(flow);
			w.setTransform(place);
		});
	}

	/** Lets the first line stand on an outline of the same job: the wording is then where the outline is. */
	public static ChangeFlow along(Wording wording, Outline path) {
		return new ChangeFlow(Messages.ChangeFlow_path, wording,
				w -> path != null && Jobs.jobOf(path) == Jobs.jobOf(w)
						&& (w.getFlow() != Flow.PATH || w.getPath() != path),
				w -> {
					w.setFlow(Flow.PATH);
					w.setPath(path);
					w.setTransform(Matrix.IDENTITY);
				});
	}

	/** Of the circle that the first line stands on; positive. */
	public static ChangeFlow arcRadius(Wording wording, double radius) {
		return new ChangeFlow(Messages.ChangeFlow_arcRadius, wording,
				w -> radius > 0 && isOther(radius, w.getArcRadius(), 0), w -> w.setArcRadius(radius));
	}

	/** Where on the circle the text begins, has its middle or ends: from the top, clockwise. */
	public static ChangeFlow arcAngle(Wording wording, double degrees) {
		return new ChangeFlow(Messages.ChangeFlow_arcAngle, wording,
				w -> Double.isFinite(degrees) && degrees != w.getArcAngle(), w -> w.setArcAngle(degrees));
	}

	/** Both at once, as a grip is dragged. */
	public static ChangeFlow arc(Wording wording, double radius, double degrees) {
		return new ChangeFlow(Messages.ChangeFlow_arc, wording,
				w -> radius > 0 && Double.isFinite(radius) && Double.isFinite(degrees)
						&& (radius != w.getArcRadius() || degrees != w.getArcAngle()),
				w -> {
					w.setArcRadius(radius);
					w.setArcAngle(degrees);
				});
	}

	/** Whether the letters stand within the circle. */
	public static ChangeFlow arcInside(Wording wording, boolean inside) {
		return new ChangeFlow(Messages.ChangeFlow_arcSide, wording, w -> inside != w.isArcInside(),
				w -> w.setArcInside(inside));
	}

	/** Whether the heads of the letters point to the middle of the circle. */
	public static ChangeFlow arcInward(Wording wording, boolean inward) {
		return new ChangeFlow(Messages.ChangeFlow_arcHeads, wording, w -> inward != w.isArcInward(),
				w -> w.setArcInward(inward));
	}

	/** Where on the path the text begins, has its middle or ends. */
	public static ChangeFlow pathStart(Wording wording, double start) {
		return new ChangeFlow(Messages.ChangeFlow_pathStart, wording,
				w -> Double.isFinite(start) && start != w.getPathStart(), w -> w.setPathStart(start));
	}

	/** Whether the text runs from the end of the path to its beginning. */
	public static ChangeFlow pathReversed(Wording wording, boolean reversed) {
		return new ChangeFlow(Messages.ChangeFlow_pathReversed, wording, w -> reversed != w.isPathReversed(),
				w -> w.setPathReversed(reversed));
	}

	/** Whether the letters hang below the path. */
	public static ChangeFlow pathHanging(Wording wording, boolean hanging) {
		return new ChangeFlow(Messages.ChangeFlow_pathHanging, wording, w -> hanging != w.isPathHanging(),
				w -> w.setPathHanging(hanging));
	}

	/** Fits straight lines into a box of this size; 0 for both takes the box away. */
	public static ChangeFlow box(Wording wording, double width, double height) {
		return new ChangeFlow(Messages.ChangeFlow_box, wording,
				w -> width >= 0 && height >= 0 && width > 0 == height > 0 && Double.isFinite(width + height)
						&& (width != w.getBoxWidth() || height != w.getBoxHeight()),
				w -> {
					w.setBoxWidth(width);
					w.setBoxHeight(height);
				});
	}
}
