package org.frisket.print.register;

import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/** The maps that bring designed marks nearest to measured ones, in the sum of their squared distances. */
final class MarkFit {

	private static final int ROUNDS = 30;
	private static final double SETTLED = 1e-13;

	private MarkFit() {
	}

	static Projection of(FitKind kind, List<Point> designed, List<Point> measured) {
		return switch (kind) {
		case RIGID -> Projection.of(turn(designed, measured, false));
		case SIMILARITY -> Projection.of(turn(designed, measured, true));
		case AFFINE -> Projection.of(affine(designed, measured));
		case PROJECTIVE -> projective(designed, measured);
		};
	}

	/** The closed form of Umeyama (IEEE TPAMI 13(4), 1991) in the plane, where it needs no decomposition. */
	static Transform turn(List<Point> designed, List<Point> measured, boolean scaled) {
		List<Point> p = Marks.centred(designed);
		List<Point> q = Marks.centred(measured);
		double a = 0;
		double b = 0;
		double s = 0;
		for (int i = 0; i < p.size(); i++) {
			a += p.get(i).dot(q.get(i));
			b += p.get(i).cross(q.get(i));
			s += p.get(i).dot(p.get(i));
		}
		double scale = scaled ? Math.hypot(a, b) / s : 1;
		Transform turned = Transform.rotation(Math.atan2(b, a)).then(Transform.scaling(scale, scale));
		return placed(turned, designed, measured);
	}

	/** The same for a sheet that lies on its face. */
	static Transform mirrored(List<Point> designed, List<Point> measured) {
		Transform flip = Transform.scaling(-1, 1);
		return flip.then(turn(designed.stream().map(flip::apply).toList(), measured, true));
	}

	/** Least squares of a linear map between the centred marks. */
	static Transform affine(List<Point> designed, List<Point> measured) {
		List<Point> p = Marks.centred(designed);
		List<Point> q = Marks.centred(measured);
		double xx = 0;
		double xy = 0;
		double yy = 0;
		double ux = 0;
		double uy = 0;
		double vx = 0;
		double vy = 0;
		for (int i = 0; i < p.size(); i++) {
			double x = p.get(i).x();
			double y = p.get(i).y();
			xx += x * x;
			xy += x * y;
			yy += y * y;
			ux += q.get(i).x() * x;
			uy += q.get(i).x() * y;
			vx += q.get(i).y() * x;
			vy += q.get(i).y() * y;
		}
		double det = xx * yy - xy * xy;
		Transform linear = new Transform((ux * yy - uy * xy) / det, (vx * yy - vy * xy) / det, (uy * xx - ux * xy) / det,
				(vy * xx - vx * xy) / det, 0, 0);
		return placed(linear, designed, measured);
	}

	private static Transform placed(Transform linear, List<Point> designed, List<Point> measured) {
		Point to = Marks.centroid(measured).minus(linear.apply(Marks.centroid(designed)));
		return linear.then(Transform.translation(to.x(), to.y()));
	}

	/**
	 * The direct linear transform between normalised marks (Hartley, In Defense of the Eight-Point Algorithm, IEEE TPAMI
	 * 19(6), 1997; from memory). It makes an algebraic error small; Gauss-Newton steps from there make the distances small.
	 */
	static Projection projective(List<Point> designed, List<Point> measured) {
		Transform from = normal(designed);
		Transform to = normal(measured);
		List<Point> p = designed.stream().map(from::apply).toList();
		List<Point> q = measured.stream().map(to::apply).toList();
		double[][] rows = new double[2 * p.size()][];
		double[] right = new double[2 * p.size()];
		for (int i = 0; i < p.size(); i++) {
			double x = p.get(i).x();
			double y = p.get(i).y();
			double u = q.get(i).x();
			double v = q.get(i).y();
			rows[2 * i] = new double[] { x, y, 1, 0, 0, 0, -u * x, -u * y };
			rows[2 * i + 1] = new double[] { 0, 0, 0, x, y, 1, -v * x, -v * y };
			right[2 * i] = u;
			right[2 * i + 1] = v;
		}
		Projection map = projection(LeastSquares.solve(rows, right));
		if (p.size() > FitKind.PROJECTIVE.leastMarks()) {
			map = nearer(map, p, q);
		}
		return scaled(Projection.of(from).then(map).then(Projection.of(to.inverse())), Marks.centroid(designed));
	}

	private static Projection projection(double[] h) {
		return new Projection(h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], 1);
	}

	/** Brings the marks round the origin, at a mean distance of the root of 2. */
	private static Transform normal(List<Point> marks) {
		Point centre = Marks.centroid(marks);
		double mean = marks.stream().mapToDouble(mark -> mark.distance(centre)).average().orElse(1);
		double scale = Math.sqrt(2) / mean;
		return Transform.translation(-centre.x(), -centre.y()).then(Transform.scaling(scale, scale));
	}

	/** With the last number 1 if that keeps the weights of the marks positive, which is the usual case. */
	private static Projection scaled(Projection map, Point centre) {
		Projection one = map.times(1 / map.h33());
		return Double.isFinite(one.h11()) && one.weight(centre) > 0 ? one : map.times(1 / map.weight(centre));
	}

	private static Projection nearer(Projection start, List<Point> p, List<Point> q) {
		Projection best = start;
		double least = squares(best, p, q);
		double share = 1;
		for (int round = 0; round < ROUNDS; round++) {
			double[][] rows = new double[2 * p.size()][];
			double[] right = new double[2 * p.size()];
			for (int i = 0; i < p.size(); i++) {
				double[][] both = MarkPrecision.projective(best, p.get(i), Point.ORIGIN);
				Point error = q.get(i).minus(best.apply(p.get(i)));
				rows[2 * i] = both[0];
				rows[2 * i + 1] = both[1];
				right[2 * i] = error.x();
				right[2 * i + 1] = error.y();
			}
			double[] step = LeastSquares.solve(rows, right);
			double[] h = best.rows();
			double length = 0;
			for (int k = 0; k < step.length; k++) {
				h[k] += share * step[k];
				length = Math.max(length, Math.abs(share * step[k]));
			}
			Projection next = projection(h);
			double squares = squares(next, p, q);
			if (squares <= least) {
				best = next;
				least = squares;
			} else {
				share /= 2;
			}
			if (length < SETTLED) {
				break;
			}
		}
		return best;
	}

	private static double squares(Projection map, List<Point> p, List<Point> q) {
		double sum = 0;
		for (int i = 0; i < p.size(); i++) {
			Point error = q.get(i).minus(map.apply(p.get(i)));
			sum += error.dot(error);
		}
		return sum;
	}
}
