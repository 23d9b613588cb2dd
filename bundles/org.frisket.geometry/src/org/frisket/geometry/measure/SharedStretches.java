package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;

/** Where contours run along others, as the edges of neighbours do that touch. */
public final class SharedStretches {

	private static final double FLATTENING = 0.25;
	/** Two lines that meet at more than this cross; those that do not run along each other. */
	private static final double ALONG = Math.sin(Math.toRadians(8));
	/** In mm: the way along which two lines are looked at together. */
	private static final double STEP = 0.5;

	/**
	 * @param length  in mm, of all stretches together, to within the step of half a millimetre at each end
	 * @param longest in mm, of the longest one
	 * @param place   in the middle of that
	 * @param whole   of all that was looked at, in mm
	 */
	public record Shared(double length, double longest, Point place, double whole) {

		/** Whether nothing of it runs elsewhere. */
		public boolean isAll() {
			return length >= 0.999 * whole;
		}
	}

	private SharedStretches() {
	}

	/** What of some contours lies on others, to within the tolerance; empty if nothing does. */
	public static Optional<Shared> of(List<Contour> contours, List<Contour> others, Tolerance tolerance,
			Monitor monitor) {
		double near = tolerance.mm();
		Bounds around = bounds(contours);
		EdgeGrid grid = grid(others, around.grown(2 * near), near * FLATTENING);
		if (grid == null) {
			return Optional.empty();
		}
		Bounds reach = bounds(others).grown(2 * near);
		double length = 0;
		double whole = 0;
		Run longest = new Run(0, Point.ORIGIN);
		for (Contour contour : contours) {
			monitor.check();
			List<Point> points = contour.flattened(near * FLATTENING);
			int edges = contour.isClosed() ? points.size() : points.size() - 1;
			List<Point> run = new ArrayList<>();
			for (int i = 0; i < edges; i++) {
				Point from = points.get(i);
				Point to = points.get((i + 1) % points.size());
				double edge = from.distance(to);
				whole += edge;
				int steps = (int) Math.ceil(edge / STEP);
				Point along = to.minus(from).unit();
				for (int k = 0; k < steps; k++) {
					Point middle = from.towards(to, (k + 0.5) / steps);
					boolean shared = reach.contains(middle) && grid.runsAlong(middle, along, near, ALONG);
					if (shared) {
						length += edge / steps;
						if (run.isEmpty()) {
							run.add(from.towards(to, (double) k / steps));
						}
						run.add(from.towards(to, (k + 1.0) / steps));
					} else {
						longest = Run.longer(longest, run);
						run.clear();
					}
				}
			}
			longest = Run.longer(longest, run);
		}
		return length == 0 ? Optional.empty()
				: Optional.of(new Shared(length, longest.length(), longest.middle(), whole));
	}

	private record Run(double length, Point middle) {

		static Run longer(Run known, List<Point> points) {
			double length = 0;
			for (int i = 1; i < points.size(); i++) {
				length += points.get(i - 1).distance(points.get(i));
			}
			if (length <= known.length()) {
				return known;
			}
			double half = length / 2;
			for (int i = 1; i < points.size(); i++) {
				double step = points.get(i - 1).distance(points.get(i));
				if (step >= half) {
					return new Run(length, points.get(i - 1).towards(points.get(i), half / step));
				}
				half -= step;
			}
			return new Run(length, points.get(points.size() / 2));
		}
	}

	private static Bounds bounds(List<Contour> contours) {
		return contours.stream().map(Contour::bounds).reduce(Bounds.EMPTY, Bounds::with);
	}

	/** Only of what may be near; null if nothing is. */
	private static EdgeGrid grid(List<Contour> contours, Bounds around, double deviation) {
		List<double[]> edges = new ArrayList<>();
		for (Contour contour : contours) {
			if (!contour.bounds().intersects(around)) {
				continue;
			}
			List<Point> points = contour.flattened(deviation);
			int count = contour.isClosed() ? points.size() : points.size() - 1;
			for (int i = 0; i < count; i++) {
				Point from = points.get(i);
				Point to = points.get((i + 1) % points.size());
				if (!from.equals(to) && Bounds.of(from).with(to).intersects(around)) {
					edges.add(new double[] { from.x(), from.y(), to.x(), to.y() });
				}
			}
		}
		if (edges.isEmpty()) {
			return null;
		}
		double[][] ends = new double[4][edges.size()];
		for (int i = 0; i < edges.size(); i++) {
			for (int k = 0; k < ends.length; k++) {
				ends[k][i] = edges.get(i)[k];
			}
		}
		return new EdgeGrid(ends[0], ends[1], ends[2], ends[3]);
	}
}
