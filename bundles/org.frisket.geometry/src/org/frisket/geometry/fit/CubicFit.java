package org.frisket.geometry.fit;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;

/**
 * One cubic through a stretch of a chain. The ends lie on the chain; the directions there are given, or left to the
 * fit where the chain has a corner. What remains, the lengths of the handles or the free control points, is found by
 * Gauss-Newton steps on the distances at right angles to the curve, which converge far quicker than distances at fixed
 * parameters.
 */
final class CubicFit {

	private static final int SAMPLES = 20;
	private static final int STEPS = 10;
	private static final int LOOKS_AT_LEAST = 32;
	/** The heavy one keeps handles sane where a nearly straight stretch leaves open which is long and which short. */
	private static final double LIGHT_DAMPING = 1e-7;
	private static final double HEAVY_DAMPING = 1e-4;
	private static final double WIDEST_FREE_TURN = Math.cos(Math.toRadians(45));

	private final Chain chain;
	private final double tolerance;

	/** The samples: coordinates, share of the way, parameter on the cubic. The first and last are the ends. */
	private final double[] x = new double[SAMPLES + 2];
	private final double[] y = new double[SAMPLES + 2];
	private final double[] way = new double[SAMPLES + 2];
	private final double[] parameters = new double[SAMPLES + 2];
	private int count;

	private Point startTangent;
	private Point endTangent;
	private int unknowns;

	private Cubic cubic;
	private final PowerCubic curve = new PowerCubic();

	CubicFit(Chain chain, double tolerance) {
		this.chain = chain;
		this.tolerance = tolerance;
	}

	/** The cubic of the last fit. */
	Cubic cubic() {
		return cubic;
	}

	/**
	 * Fits the stretch between two point indices.
	 *
	 * @param startTangent direction of travel at the start, null if free
	 * @param endTangent direction of travel at the end, null if free
	 * @return the largest distance between chain and cubic, looked at until it is beyond the tolerance; infinite if
	 *         the cubic does not follow the chain at all
	 */
	double fit(int from, int to, Point startTangent, Point endTangent) {
		this.startTangent = startTangent;
		this.endTangent = endTangent;
		unknowns = (startTangent == null ? 2 : 1) + (endTangent == null ? 2 : 1);
		pickSamples(from, to);
		improve(from, to, LIGHT_DAMPING);
		if (!handlesAreSound(chain.length(from, to))) {
			improve(from, to, HEAVY_DAMPING);
		}
		boolean startHooks = startTangent == null && hooks(cubic.control1(), cubic.start(), from, from + 1);
		boolean endHooks = endTangent == null && hooks(cubic.end(), cubic.control2(), to - 1, to);
		if (startHooks || endHooks) {
			return fit(from, to, startHooks ? chain.tangent(from, from, to) : startTangent,
					endHooks ? chain.tangent(to, from, to) : endTangent);
		}
		if (!handlesAreSound(chain.length(from, to))) {
			return Double.POSITIVE_INFINITY;
		}
		double error = sampleError();
		return error > tolerance ? error : Math.max(error, deviation(from, to));
	}

	private void pickSamples(int from, int to) {
		double length = chain.length(from, to);
		boolean all = to - from <= SAMPLES + 1;
		int index = from;
		count = 0;
		while (true) {
			x[count] = chain.point(index).x();
			y[count] = chain.point(index).y();
			way[count] = chain.length(from, index) / length;
			parameters[count] = way[count];
			count++;
			if (index == to) {
				return;
			}
			index = all ? index + 1
					: count > SAMPLES ? to
							: chain.indexAfter(index, to, count * length / (SAMPLES + 1) - chain.length(from, index));
		}
	}

	private void startByThirds(int from, int to) {
		Point start = chain.point(from);
		Point end = chain.point(to);
		double third = start.distance(end) / 3;
		Point chord = end.minus(start).unit();
		Point leaving = startTangent == null ? chord : startTangent;
		Point arriving = endTangent == null ? chord : endTangent;
		use(new Cubic(start, start.plus(leaving.times(third)), end.minus(arriving.times(third)), end));
	}

	private void use(Cubic next) {
		cubic = next;
		curve.set(next);
	}

	private void improve(int from, int to, double damping) {
		startByThirds(from, to);
		if (count == 2) {
			return;
		}
		improveAtFixedParameters(damping);
		double moved = Double.POSITIVE_INFINITY;
		for (int step = 0; step < STEPS && moved > 0.02 * tolerance; step++) {
			NormalEquations equations = new NormalEquations(unknowns);
			gatherDistances(equations);
			moved = apply(equations.solve(damping));
		}
	}

	/** Least squares of both coordinates at parameters by length of way: a first guess, linear. */
	private void improveAtFixedParameters(double damping) {
		NormalEquations equations = new NormalEquations(unknowns);
		double[] row = new double[unknowns];
		System.arraycopy(way, 0, parameters, 0, count);
		for (int i = 1; i < count - 1; i++) {
			double t = parameters[i];
			fillRow(row, t, 1, 0);
			equations.add(row, x[i] - curve.x(t));
			fillRow(row, t, 0, 1);
			equations.add(row, y[i] - curve.y(t));
		}
		Cubic before = cubic;
		apply(equations.solve(damping));
		if (!handlesAreSound(2 * cubic.start().distance(cubic.end()))) {
			use(before);
		}
	}

	/** Moves the parameters to the feet of the samples and asks for a curve nearer to these. */
	private void gatherDistances(NormalEquations equations) {
		double[] row = new double[unknowns];
		for (int i = 1; i < count - 1; i++) {
			double t = parameters[i] = curve.project(x[i], y[i], parameters[i], 3);
			double speedX = curve.dx(t);
			double speedY = curve.dy(t);
			double speed = Math.sqrt(speedX * speedX + speedY * speedY) + Double.MIN_NORMAL;
			double normalX = -speedY / speed;
			double normalY = speedX / speed;
			double distance = (x[i] - curve.x(t)) * normalX + (y[i] - curve.y(t)) * normalY;
			fillRow(row, t, normalX, normalY);
			equations.add(row, distance);
		}
	}

	/** How the component along (nx, ny) of the curve point at t changes with each unknown. */
	private void fillRow(double[] row, double t, double nx, double ny) {
		double first = 3 * (1 - t) * (1 - t) * t;
		double second = 3 * (1 - t) * t * t;
		int column = 0;
		if (startTangent == null) {
			row[column++] = first * nx;
			row[column++] = first * ny;
		} else {
			row[column++] = first * (nx * startTangent.x() + ny * startTangent.y());
		}
		if (endTangent == null) {
			row[column++] = second * nx;
			row[column] = second * ny;
		} else {
			row[column] = -second * (nx * endTangent.x() + ny * endTangent.y());
		}
	}

	/** Changes the unknowns; returns how far a control point moved. */
	private double apply(double[] change) {
		int column = 0;
		Point first = startTangent == null ? new Point(change[column++], change[column++])
				: startTangent.times(change[column++]);
		Point second = endTangent == null ? new Point(change[column++], change[column])
				: endTangent.times(-change[column]);
		if (!first.isFinite() || !second.isFinite()) {
			return 0;
		}
		// a step longer than the stretch itself comes from a near-singular system
		double limit = cubic.start().distance(cubic.end()) + tolerance;
		double size = Math.max(first.length(), second.length());
		double damping = size > limit ? limit / size : 1;
		use(new Cubic(cubic.start(), cubic.control1().plus(first.times(damping)),
				cubic.control2().plus(second.times(damping)), cubic.end()));
		return size * damping;
	}

	/** Whether a free handle turned away from the chain's edge, which bends the curve back at its very end. */
	private boolean hooks(Point ahead, Point behind, int from, int to) {
		Point handle = ahead.minus(behind);
		Point edge = chain.point(to).minus(chain.point(from));
		return handle.dot(edge) <= WIDEST_FREE_TURN * handle.length() * edge.length();
	}

	private boolean handlesAreSound(double longest) {
		Point leaving = cubic.control1().minus(cubic.start());
		Point arriving = cubic.end().minus(cubic.control2());
		return leaving.length() < longest && arriving.length() < longest
				&& (startTangent == null || leaving.dot(startTangent) > 0)
				&& (endTangent == null || arriving.dot(endTangent) > 0);
	}

	private double sampleError() {
		double largest = 0;
		for (int i = 1; i < count - 1; i++) {
			parameters[i] = curve.project(x[i], y[i], parameters[i], 3);
			largest = Math.max(largest, curve.distance(x[i], y[i], parameters[i]));
		}
		return largest;
	}

	/**
	 * Largest distance between chain points and the cubic, and between the cubic and the chain's edges, up to where it
	 * is beyond the tolerance; infinite if the cubic runs backwards there.
	 */
	private double deviation(int from, int to) {
		double length = chain.length(from, to);
		int looks = 1 + LOOKS_AT_LEAST / (to - from);
		double worst = 0;
		double before = 0;
		int sample = 0;
		for (int i = from + 1; i <= to; i++) {
			double t = 1;
			if (i < to) {
				double at = chain.length(from, i) / length;
				while (way[sample + 1] < at) {
					sample++;
				}
				double share = (at - way[sample]) / (way[sample + 1] - way[sample]);
				Point point = chain.point(i);
				t = curve.project(point.x(), point.y(),
						parameters[sample] + share * (parameters[sample + 1] - parameters[sample]), 3);
				worst = Math.max(worst, curve.distance(point.x(), point.y(), t));
			}
			worst = Math.max(worst, deviationFromEdge(i - 1, before, t, looks));
			if (worst > tolerance) {
				return worst;
			}
			before = t;
		}
		return worst;
	}

	private double deviationFromEdge(int start, double from, double to, int looks) {
		if (to < from - 1e-6) {
			return Double.POSITIVE_INFINITY;
		}
		double startX = chain.point(start).x();
		double startY = chain.point(start).y();
		double edgeX = chain.point(start + 1).x() - startX;
		double edgeY = chain.point(start + 1).y() - startY;
		double square = edgeX * edgeX + edgeY * edgeY;
		double worst = 0;
		for (int look = 1; look <= looks; look++) {
			double t = from + (to - from) * look / (looks + 1);
			if (curve.dx(t) * edgeX + curve.dy(t) * edgeY < 0) {
				return Double.POSITIVE_INFINITY;
			}
			double wayX = curve.x(t) - startX;
			double wayY = curve.y(t) - startY;
			double along = Math.min(1, Math.max(0, (wayX * edgeX + wayY * edgeY) / square));
			double missX = wayX - along * edgeX;
			double missY = wayY - along * edgeY;
			worst = Math.max(worst, Math.sqrt(missX * missX + missY * missY));
		}
		return worst;
	}
}
