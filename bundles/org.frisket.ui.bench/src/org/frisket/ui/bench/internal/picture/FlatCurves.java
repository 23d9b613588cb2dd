package org.frisket.ui.bench.internal.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;

/** An outline as chords, for questions that are asked at every move of the pointer. */
public final class FlatCurves {

	/** Flat coordinate lists x0 y0 x1 y1 …; a ring repeats its first corner. */
	private final List<double[]> rings = new ArrayList<>();
	private final List<double[]> chains = new ArrayList<>();
	private final Bounds bounds;

	/** @param deviation largest distance in mm of a chord from its curve */
	public FlatCurves(Outline outline, double deviation) {
		for (Contour contour : outline.contours()) {
			List<Point> points = new ArrayList<>(contour.flattened(deviation));
			if (points.isEmpty()) {
				continue;
			}
			if (contour.isClosed()) {
				points.add(points.get(0));
			}
			(contour.isClosed() ? rings : chains).add(coordinates(points));
		}
		bounds = outline.bounds();
	}

	private static double[] coordinates(List<Point> points) {
		double[] coordinates = new double[points.size() * 2];
		for (int i = 0; i < points.size(); i++) {
			coordinates[2 * i] = points.get(i).x();
			coordinates[2 * i + 1] = points.get(i).y();
		}
		return coordinates;
	}

	public Bounds bounds() {
		return bounds;
	}

	/** Whether the point is inside the closed curves, or within {@code reach} mm of any curve. */
	public boolean touches(Point point, double reach) {
		return bounds.grown(reach).contains(point) && (contains(point) || isNear(point, reach));
	}

	/** Whether a curve passes within {@code reach} mm of a place, whatever it encloses. */
	public boolean passes(Point point, double reach) {
		return bounds.grown(reach).contains(point) && isNear(point, reach);
	}

	/** Whether the point is inside the closed curves; a ring within a ring is a hole. */
	public boolean contains(Point point) {
		boolean inside = false;
		for (double[] ring : rings) {
			for (int i = 0; i + 3 < ring.length; i += 2) {
				if (ring[i + 1] > point.y() != ring[i + 3] > point.y() && point.x() < crossing(ring, i, point.y())) {
					inside = !inside;
				}
			}
		}
		return inside;
	}

	private static double crossing(double[] ring, int i, double y) {
		return ring[i] + (y - ring[i + 1]) * (ring[i + 2] - ring[i]) / (ring[i + 3] - ring[i + 1]);
	}

	/**
	 * Whether a convex polygon has any place in common with the curves or with what they enclose. A polygon that lies
	 * wholly in a hole has none.
	 *
	 * @param polygon its corners in turn, in mm
	 */
	public boolean meets(List<Point> polygon) {
		Bounds around = polygon.stream().map(Bounds::of).reduce(Bounds.EMPTY, Bounds::with);
		return bounds.intersects(around)
				&& (polygon.stream().anyMatch(this::contains) || Stream.concat(rings.stream(), chains.stream())
						.anyMatch(chain -> meets(chain, polygon)));
	}

	private static boolean meets(double[] chain, List<Point> polygon) {
		for (int i = 0; i + 3 < chain.length; i += 2) {
			if (meets(new Point(chain[i], chain[i + 1]), new Point(chain[i + 2], chain[i + 3]), polygon)) {
				return true;
			}
		}
		return false;
	}

	/** Clips the chord by each side of the polygon in turn; what is left of it lies inside. */
	private static boolean meets(Point from, Point to, List<Point> polygon) {
		double first = 0;
		double last = 1;
		double turn = turn(polygon);
		for (int i = 0; i < polygon.size(); i++) {
			Point a = polygon.get(i);
			Point b = polygon.get((i + 1) % polygon.size());
			double start = turn * cross(a, b, from);
			double end = turn * cross(a, b, to);
			if (start < 0 && end < 0) {
				return false;
			}
			if (start < 0) {
				first = Math.max(first, start / (start - end));
			} else if (end < 0) {
				last = Math.min(last, start / (start - end));
			}
		}
		return first <= last;
	}

	/** 1 or -1, as the corners turn the one way or the other. */
	private static double turn(List<Point> polygon) {
		double area = 0;
		for (int i = 1; i + 1 < polygon.size(); i++) {
			area += cross(polygon.get(0), polygon.get(i), polygon.get(i + 1));
		}
		return area < 0 ? -1 : 1;
	}

	private static double cross(Point a, Point b, Point c) {
		return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
	}

	private boolean isNear(Point point, double reach) {
		return rings.stream().anyMatch(ring -> isNear(ring, point, reach))
				|| chains.stream().anyMatch(chain -> isNear(chain, point, reach));
	}

	private static boolean isNear(double[] chain, Point point, double reach) {
		for (int i = 0; i + 3 < chain.length; i += 2) {
			double dx = chain[i + 2] - chain[i];
			double dy = chain[i + 3] - chain[i + 1];
			double px = point.x() - chain[i];
			double py = point.y() - chain[i + 1];
			double square = dx * dx + dy * dy;
			double t = square == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / square));
			if (Math.hypot(px - t * dx, py - t * dy) <= reach) {
				return true;
			}
		}
		return false;
	}

	List<double[]> rings() {
		return rings;
	}
}
