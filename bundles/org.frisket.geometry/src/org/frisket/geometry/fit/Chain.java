package org.frisket.geometry.fit;

import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Point;

/** A run of dense points with the length of the way along them. Every two neighbours differ. */
final class Chain {

	private static final int TANGENT_REACH = 4;

	private final Point[] points;
	private final double[] travelled;

	Chain(List<Point> points) {
		this.points = points.toArray(Point[]::new);
		travelled = new double[this.points.length];
		for (int i = 1; i < this.points.length; i++) {
			travelled[i] = travelled[i - 1] + this.points[i].distance(this.points[i - 1]);
		}
	}

	int size() {
		return points.length;
	}

	int last() {
		return points.length - 1;
	}

	Point point(int index) {
		return points[index];
	}

	/** A stretch with both its ends. */
	List<Point> points(int from, int to) {
		return List.of(Arrays.copyOfRange(points, from, to + 1));
	}

	/** Length of the way from the first point. */
	double travelled(int index) {
		return travelled[index];
	}

	double length(int from, int to) {
		return travelled[to] - travelled[from];
	}

	/** The point index, above {@code from} and at most {@code to}, nearest to a length of way from {@code from}. */
	int indexAfter(int from, int to, double length) {
		double target = travelled[from] + length;
		int low = from + 1;
		int high = to;
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (travelled[middle] < target) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low > from + 1 && target - travelled[low - 1] < travelled[low] - target ? low - 1 : low;
	}

	/** Direction of travel at a point from its neighbours within {@code from..to}. */
	Point tangent(int index, int from, int to) {
		return tangent(points, travelled, Math.max(from, index - TANGENT_REACH), Math.min(to, index + TANGENT_REACH),
				index);
	}

	/** Direction of travel at the joint of a closed chain whose last point repeats the first. */
	Point tangentAtClosure() {
		int reach = Math.min(TANGENT_REACH, (points.length - 1) / 2);
		Point[] around = new Point[2 * reach + 1];
		double[] way = new double[around.length];
		for (int i = -reach; i <= reach; i++) {
			int index = i < 0 ? last() + i : i;
			around[i + reach] = points[index];
			way[i + reach] = i < 0 ? travelled[index] - travelled[last()] : travelled[index];
		}
		return tangent(around, way, 0, 2 * reach, reach);
	}

	/** Slope at one point of the parabola through it that lies closest to the others, the near ones weighing more. */
	private static Point tangent(Point[] points, double[] way, int from, int to, int at) {
		double reach = 1.01 * Math.max(way[to] - way[at], way[at] - way[from]);
		double s2 = 0;
		double s3 = 0;
		double s4 = 0;
		Point first = Point.ORIGIN;
		Point second = Point.ORIGIN;
		for (int i = from; i <= to; i++) {
			double h = (way[i] - way[at]) / reach;
			double weight = 1 - h * h;
			Point delta = points[i].minus(points[at]);
			s2 += weight * h * h;
			s3 += weight * h * h * h;
			s4 += weight * h * h * h * h;
			first = first.plus(delta.times(weight * h));
			second = second.plus(delta.times(weight * h * h));
		}
		double determinant = s2 * s4 - s3 * s3;
		if (determinant < 1e-12 * s2 * s4) {
			return first.unit();
		}
		Point slope = first.times(s4).minus(second.times(s3)).times(1 / determinant);
		return slope.equals(Point.ORIGIN) ? first.unit() : slope.unit();
	}
}
