package org.frisket.prepare.wording;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.Alignment;
import org.frisket.model.Flow;
import org.frisket.model.Matrix;
import org.frisket.model.Wording;

/**
 * Where a wording is to lie when its lines are to run along something else, so that it is seen about where it was: its
 * origin is the start of its first line, but the middle of its circle on an arc.
 */
public final class FlowPlace {

	private FlowPlace() {
	}

	/**
	 * The transform that brings the middle of the wording near to where it is now.
	 *
	 * @param alignment that it will have
	 * @param seen      around it as it is now, in the job's frame; if empty, its transform stays
	 */
	public static Matrix of(Wording wording, Flow flow, Alignment alignment, Bounds seen) {
		Matrix now = wording.getTransform() == null ? Matrix.IDENTITY : wording.getTransform();
		Transform transform = new Transform(now.a(), now.b(), now.c(), now.d(), now.e(), now.f());
		if (seen.isEmpty() || transform.determinant() == 0) {
			return now;
		}
		Transform back = transform.inverse();
		Bounds own = Bounds.of(back.apply(new Point(seen.minX(), seen.minY())))
				.with(back.apply(new Point(seen.maxX(), seen.minY()))).with(back.apply(new Point(seen.maxX(), seen.maxY())))
				.with(back.apply(new Point(seen.minX(), seen.maxY())));
		Point by = own.centre().minus(middle(wording, flow, alignment, own));
		return Matrix.translation(by.x(), by.y()).then(now);
	}

	/** Of the wording in its own frame when it is set so. */
	private static Point middle(Wording wording, Flow flow, Alignment alignment, Bounds own) {
		double height = wording.getHeight();
		if (flow == Flow.ARC && wording.getArcRadius() > 0) {
			double radius = wording.getArcRadius();
			double half = own.width() / 2 / radius;
			double along = alignment == Alignment.CENTRE ? 0 : alignment == Alignment.RIGHT ? -half : half;
			double angle = Math.toRadians(wording.getArcAngle()) + (wording.isArcInward() ? -along : along);
			double away = radius + (wording.isArcInside() ? -height : height) / 2;
			return new Point(away * Math.sin(angle), -away * Math.cos(angle));
		}
		String text = wording.getText() == null ? "" : wording.getText();
		double lineDistance = wording.getLineSpacing() * height;
		if (flow == Flow.STACKED) {
			// a column of letters, a line distance from each to the next, about as wide as they are high
			int letters = text.lines().mapToInt(String::length).max().orElse(1);
			return new Point(height / 2, ((letters - 1) * lineDistance - height) / 2);
		}
		long lines = Math.max(1, text.lines().count());
		return new Point(own.width() / 2, ((lines - 1) * lineDistance - height) / 2);
	}
}
