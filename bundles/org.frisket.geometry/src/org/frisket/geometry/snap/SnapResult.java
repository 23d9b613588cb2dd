package org.frisket.geometry.snap;

import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;

/**
 * What holds a moved thing, on each axis by itself.
 *
 * @param x    the vertical line that holds it
 * @param y    the horizontal line that holds it
 * @param node the node on which a point of it comes to lie; only where both axes are held by that node
 */
public record SnapResult(Optional<SnapHold> x, Optional<SnapHold> y, Optional<Point> node) {

	/** Nothing is near. */
	public static final SnapResult NONE = new SnapResult(Optional.empty(), Optional.empty(), Optional.empty());

	/** By how much to go to the right, in mm; 0 where nothing holds. */
	public double dx() {
		return x.map(SnapHold::shift).orElse(0.0);
	}

	/** By how much to go down, in mm; 0 where nothing holds. */
	public double dy() {
		return y.map(SnapHold::shift).orElse(0.0);
	}

	public boolean isHeld() {
		return x.isPresent() || y.isPresent();
	}

	/** A point where it is held. */
	public Point applied(Point point) {
		return new Point(point.x() + dx(), point.y() + dy());
	}

	/** A box where it is held. */
	public Bounds applied(Bounds box) {
		return new Bounds(box.minX() + dx(), box.minY() + dy(), box.maxX() + dx(), box.maxY() + dy());
	}
}
