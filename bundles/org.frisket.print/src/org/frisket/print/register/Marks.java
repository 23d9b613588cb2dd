package org.frisket.print.register;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;

/** What is asked of a set of places: its middle, its spread, whether it is stretched out enough to measure by. */
final class Marks {

	private Marks() {
	}

	static Point centroid(List<Point> marks) {
		Point sum = Point.ORIGIN;
		for (Point mark : marks) {
			sum = sum.plus(mark);
		}
		return sum.times(1.0 / marks.size());
	}

	static List<Point> centred(List<Point> marks) {
		Point centre = centroid(marks);
		return marks.stream().map(mark -> mark.minus(centre)).toList();
	}

	/** Root of the mean squared distance from the centroid, mm. */
	static double spread(List<Point> marks) {
		return Math.sqrt(centred(marks).stream().mapToDouble(p -> p.dot(p)).average().orElse(0));
	}

	/**
	 * The ratio of the two singular values of the centred marks: 1 if they spread the same in all directions, 0 on a line.
	 */
	static double conditioning(List<Point> marks) {
		double xx = 0;
		double xy = 0;
		double yy = 0;
		for (Point p : centred(marks)) {
			xx += p.x() * p.x();
			xy += p.x() * p.y();
			yy += p.y() * p.y();
		}
		double middle = (xx + yy) / 2;
		double half = Math.hypot((xx - yy) / 2, xy);
		double larger = middle + half;
		// the smaller eigenvalue from the determinant, which keeps its digits where the difference would lose them
		return larger == 0 ? 0 : Math.sqrt(Math.max(0, xx * yy - xy * xy)) / larger;
	}

	/** The smallest height of a triangle by its longest side. */
	static double slenderness(Point a, Point b, Point c) {
		double longest = Math.max(a.distance(b), Math.max(b.distance(c), c.distance(a)));
		return longest == 0 ? 0 : Math.abs(b.minus(a).cross(c.minus(a))) / (longest * longest);
	}

	/** All but one. */
	static List<Point> without(List<Point> marks, int index) {
		List<Point> rest = new ArrayList<>(marks);
		rest.remove(index);
		return rest;
	}
}
