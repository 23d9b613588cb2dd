package org.frisket.impose.search;

import org.frisket.impose.fit.NoFit;
import org.frisket.impose.shape.Solid;

/**
 * What a part in one turn would lose anywhere, as all others lie: gathered once, then asked for many places. One step of
 * a budget is one such question.
 */
final class Others {

	private final Arrangement at;
	private final Clashes clashes;
	/** Of those that were met; others have none yet. */
	private final NoFit[] field;
	private final int[] which;
	/** Where the part's origin may be for its box to meet that of the other. */
	private final double[] boxMinX;
	private final double[] boxMinY;
	private final double[] boxMaxX;
	private final double[] boxMaxY;
	private final double[] x;
	private final double[] y;
	// into the frame of the field, with the sign of who is seen from whom
	private final double[] cos;
	private final double[] sin;
	private final double[] reach2;
	private final double[] weight;
	private int part;
	private int turn;
	private int count;
	private double minX;
	private double minY;
	private double maxX;
	private double maxY;
	private final double[] way = new double[2];
	private long asked;

	Others(Arrangement at, Clashes clashes) {
		this.at = at;
		this.clashes = clashes;
		int n = at.parts();
		field = new NoFit[n];
		which = new int[n];
		boxMinX = new double[n];
		boxMinY = new double[n];
		boxMaxX = new double[n];
		boxMaxY = new double[n];
		x = new double[n];
		y = new double[n];
		cos = new double[n];
		sin = new double[n];
		reach2 = new double[n];
		weight = new double[n];
	}

	/** Gets ready to be asked for a part so turned; false if the sheet is too small for it. */
	boolean look(int part, int turn) {
		this.part = part;
		this.turn = turn;
		Shapes shapes = at.shapes;
		int own = at.shape[part];
		Solid solid = shapes.solid(own, turn);
		minX = -solid.minX();
		minY = -solid.minY();
		maxX = at.length - solid.maxX();
		maxY = at.width - solid.maxY();
		if (maxX < minX || maxY < minY) {
			return false;
		}
		count = 0;
		for (int q = 0; q < at.parts(); q++) {
			if (q == part) {
				continue;
			}
			int other = at.shape[q];
			boolean second = own >= other;
			int frame = second ? at.turn[q] : turn;
			field[count] = null;
			which[count] = q;
			Solid there = at.solid(q);
			boxMinX[count] = at.x[q] + there.minX() - solid.maxX() - shapes.slack();
			boxMinY[count] = at.y[q] + there.minY() - solid.maxY() - shapes.slack();
			boxMaxX[count] = at.x[q] + there.maxX() - solid.minX() + shapes.slack();
			boxMaxY[count] = at.y[q] + there.maxY() - solid.minY() + shapes.slack();
			double sign = second ? 1 : -1;
			cos[count] = sign * shapes.cos[frame];
			sin[count] = sign * shapes.sin[frame];
			x[count] = at.x[q];
			y[count] = at.y[q];
			double r = shapes.reach[own] + shapes.reach[other];
			reach2[count] = r * r;
			weight[count] = clashes.weight(part, q) * shapes.weight[own] * shapes.weight[other];
			count++;
		}
		return true;
	}

	private NoFit field(int i) {
		if (field[i] == null) {
			int q = which[i];
			int own = at.shape[part];
			int other = at.shape[q];
			field[i] = own >= other ? at.shapes.noFit(other, at.turn[q], own, turn)
					: at.shapes.noFit(own, turn, other, at.turn[q]);
		}
		return field[i];
	}

	private boolean meets(int i, double px, double py) {
		if (!(px > boxMinX[i] && px < boxMaxX[i] && py > boxMinY[i] && py < boxMaxY[i])) {
			return false;
		}
		double dx = px - x[i];
		double dy = py - y[i];
		return dx * dx + dy * dy < reach2[i];
	}

	double minX() {
		return minX;
	}

	double minY() {
		return minY;
	}

	double maxX() {
		return maxX;
	}

	double maxY() {
		return maxY;
	}

	double heldX(double px) {
		return Math.min(maxX, Math.max(minX, px));
	}

	double heldY(double py) {
		return Math.min(maxY, Math.max(minY, py));
	}

	/** What the part loses there; not less than the limit once that is reached. */
	double loss(double px, double py, double limit) {
		asked++;
		double sum = 0;
		for (int i = 0; i < count; i++) {
			if (meets(i, px, py)) {
				double dx = px - x[i];
				double dy = py - y[i];
				double depth = field(i).depth(cos[i] * dx + sin[i] * dy, cos[i] * dy - sin[i] * dx);
				if (depth > 0) {
					sum += depth * weight[i];
					if (sum >= limit) {
						return sum;
					}
				}
			}
		}
		return sum;
	}

	/** The ways out of all that is in the way there. */
	void ways(double px, double py, Ways into) {
		asked++;
		into.clear();
		for (int i = 0; i < count; i++) {
			if (meets(i, px, py)) {
				double dx = px - x[i];
				double dy = py - y[i];
				double depth = field(i).clear(cos[i] * dx + sin[i] * dy, cos[i] * dy - sin[i] * dx, way);
				if (depth > 0) {
					into.add(cos[i] * way[0] - sin[i] * way[1], sin[i] * way[0] + cos[i] * way[1], depth, weight[i]);
				}
			}
		}
	}

	/** How many questions were asked since the last time. */
	long takeAsked() {
		long since = asked;
		asked = 0;
		return since;
	}
}
