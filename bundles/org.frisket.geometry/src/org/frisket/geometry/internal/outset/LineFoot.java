package org.frisket.geometry.internal.outset;

import org.frisket.geometry.Line;
import org.frisket.geometry.Point;

/** A straight segment of the shape. */
final class LineFoot implements Foot {

	private final double x;
	private final double y;
	private final double dx;
	private final double dy;
	private final double normalX;
	private final double normalY;

	LineFoot(Line line) {
		Point normal = line.startTangent().quarterTurn();
		x = line.start().x();
		y = line.start().y();
		dx = line.end().x() - x;
		dy = line.end().y() - y;
		normalX = normal.x();
		normalY = normal.y();
	}

	@Override
	public void at(double t, double distance, double[] place) {
		place[0] = x + t * dx + distance * normalX;
		place[1] = y + t * dy + distance * normalY;
		place[2] = dx;
		place[3] = dy;
	}

	@Override
	public double stretching(double t, double distance) {
		return 1;
	}

	@Override
	public boolean isEven() {
		return true;
	}
}
