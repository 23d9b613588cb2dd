package org.frisket.imports.hpgl;

import org.frisket.geometry.Transform;

/** What numbers of instructions mean: plotter units, or a user's own between two points, on a page that may be turned. */
final class Scale {

	/** Between P1 and P2 if none are given: a page whose size is not known; 400 mm a side does for all that is common. */
	private static final double[] POINTS = { 0, 0, 16_000, 16_000 };

	private double[] points = POINTS;
	/** xmin, xmax, ymin, ymax of the user's units; null for plotter units. */
	private double[] user;
	private int turn;

	void reset() {
		points = POINTS;
		user = null;
		turn = 0;
	}

	/** @param values x and y of P1 and P2, or of P1 alone, or none */
	void setPoints(double[] values) {
		if (values.length >= 4) {
			points = values.clone();
		} else if (values.length >= 2) {
			points = new double[] { values[0], values[1], values[0] + points[2] - points[0],
					values[1] + points[3] - points[1] };
		} else {
			points = POINTS;
		}
	}

	/** @return whether there is an extent between the values */
	boolean setUser(double[] values) {
		if (values.length < 4) {
			user = null;
			return true;
		}
		boolean factors = values.length > 4 && values[4] == 2;
		double xmax = factors ? values[0] + (points[2] - points[0]) / values[1] : values[1];
		double ymax = factors ? values[2] + (points[3] - points[1]) / values[3] : values[3];
		user = new double[] { values[0], xmax, values[2], ymax };
		boolean extent = user[0] != user[1] && user[2] != user[3] && Double.isFinite(xmax) && Double.isFinite(ymax);
		if (!extent) {
			user = null;
		}
		return extent;
	}

	/** @param degrees counter-clockwise */
	void setTurn(double degrees) {
		turn = Math.floorMod(Math.round((float) degrees / 90), 4);
	}

	/** From the numbers of instructions to plotter units, y upwards. */
	Transform transform() {
		Transform turned = switch (turn) {
		case 1 -> new Transform(0, 1, -1, 0, 0, 0);
		case 2 -> new Transform(-1, 0, 0, -1, 0, 0);
		case 3 -> new Transform(0, -1, 1, 0, 0, 0);
		default -> Transform.IDENTITY;
		};
		if (user == null) {
			return turned;
		}
		double sx = (points[2] - points[0]) / (user[1] - user[0]);
		double sy = (points[3] - points[1]) / (user[3] - user[2]);
		return new Transform(sx, 0, 0, sy, points[0] - user[0] * sx, points[1] - user[2] * sy).then(turned);
	}
}
