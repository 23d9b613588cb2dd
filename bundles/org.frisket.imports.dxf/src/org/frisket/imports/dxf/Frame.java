package org.frisket.imports.dxf;

import org.frisket.geometry.Transform;
import org.frisket.imports.UnreadableArtException;

/**
 * The frame that flat entities are written in. It is given by the direction it is looked at from; which way x and y run
 * follows from that by the rule DXF calls the arbitrary axis algorithm. Seen from straight below, x is mirrored.
 */
final class Frame {

	private static final double NEAR_AXIS = 1.0 / 64;

	private Frame() {
	}

	/** From the entity's frame to the plane of the drawing, looked at from above. */
	static Transform of(Entity entity) throws UnreadableArtException {
		double nx = entity.number(210, 0);
		double ny = entity.number(220, 0);
		double nz = entity.number(230, 1);
		double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
		if (length == 0 || nx == 0 && ny == 0 && nz > 0) {
			return Transform.IDENTITY;
		}
		double[] n = { nx / length, ny / length, nz / length };
		boolean near = Math.abs(n[0]) < NEAR_AXIS && Math.abs(n[1]) < NEAR_AXIS;
		double[] x = unit(cross(near ? new double[] { 0, 1, 0 } : new double[] { 0, 0, 1 }, n));
		double[] y = unit(cross(n, x));
		double height = entity.number(30, entity.number(38, 0));
		return new Transform(x[0], x[1], y[0], y[1], n[0] * height, n[1] * height);
	}

	private static double[] cross(double[] a, double[] b) {
		return new double[] { a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0] };
	}

	private static double[] unit(double[] a) {
		double length = Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
		return new double[] { a[0] / length, a[1] / length, a[2] / length };
	}
}
