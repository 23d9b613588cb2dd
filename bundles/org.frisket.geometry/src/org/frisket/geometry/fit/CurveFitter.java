package org.frisket.geometry.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;

/**
 * Turns dense points into few line and cubic segments. Corners stay corners at their own points, straight edges become
 * lines between their own end points, everything else becomes cubics that join without a kink.
 * <p>
 * No point lies farther than the tolerance from the segments, nor do the segments stray farther from the chords
 * between the points. Where two stretches of the points come closer to each other than twice that, the segments may
 * cross; {@link RegionFitter} looks for that.
 */
public final class CurveFitter {

	/** Turns of less than 10 degrees are no corners unless told otherwise. */
	public static final double DEFAULT_CORNER_ANGLE = Math.toRadians(10);

	/** Shares of the tolerance that go before the fit: for points dropped, and for steps mended. */
	private static final double THINNING = 0.02;
	private static final double MENDING = 0.1;

	private final double tolerance;
	private final double sampling;
	private final double cornerAngle;
	private final Memory memory;
	private final Monitor monitor;

	/** Expects points whose chords keep to half the tolerance from the curve they stand for. */
	public CurveFitter(Tolerance tolerance) {
		this(tolerance, tolerance.mm() / 2, DEFAULT_CORNER_ANGLE);
	}

	/**
	 * @param sampling how far in mm the chords between the points may stand off the curve they were taken from
	 * @param cornerAngle turns below this, in radians, are never kept as corners; sharper ones are if they stand out
	 *            from their neighbourhood
	 */
	public CurveFitter(Tolerance tolerance, double sampling, double cornerAngle) {
		this(tolerance, sampling, cornerAngle, Memory.NONE, Monitor.NONE);
	}

	/**
	 * @param memory  of runs between two nodes, to which the same is fitted wherever they come again
	 * @param monitor asked at each run
	 */
	CurveFitter(Tolerance tolerance, double sampling, double cornerAngle, Memory memory, Monitor monitor) {
		this.tolerance = tolerance.mm() * (1 - THINNING - MENDING / 2);
		this.sampling = sampling;
		this.cornerAngle = cornerAngle;
		this.memory = memory;
		this.monitor = monitor;
	}

	/** Segments along an open run of at least two different points. */
	public List<Segment> fitRun(List<Point> points) {
		return fitRun(points, null, null);
	}

	/**
	 * @param startTangent the curve's direction of travel at the first point, null if unknown
	 * @param endTangent the curve's direction of travel at the last point, null if unknown
	 */
	public List<Segment> fitRun(List<Point> points, Point startTangent, Point endTangent) {
		List<Point> thinned = new Thinning(tolerance * THINNING).open(points);
		if (thinned.size() < 2) {
			throw new IllegalArgumentException("a run needs two different points");
		}
		CornerFinder corners = new CornerFinder(thinned, false, sampling, cornerAngle);
		List<Integer> nodes = new ArrayList<>();
		for (int i = 0; i < thinned.size(); i++) {
			if (corners.isNode(i)) {
				nodes.add(i);
			}
		}
		return alongNodes(new Chain(thinned), nodes, corners, startTangent, endTangent);
	}

	/**
	 * The one cubic between the first and the last of at least two points that comes nearest to all of them by least
	 * squares, leaving and arriving in the given directions. It keeps to no tolerance. Where no such cubic has handles
	 * that point the right way, they are a third as long as the points' way.
	 */
	public Cubic fitCubic(List<Point> points, Point startTangent, Point endTangent) {
		List<Point> different = new ArrayList<>();
		for (Point point : points) {
			if (different.isEmpty() || !point.equals(different.get(different.size() - 1))) {
				different.add(point);
			}
		}
		Point start = points.get(0);
		Point end = points.get(points.size() - 1);
		if (different.size() < 2) {
			return new Cubic(start, start, end, end);
		}
		Chain chain = new Chain(different);
		if (!start.equals(end)) {
			CubicFit fit = new CubicFit(chain, tolerance);
			fit.fit(0, chain.last(), startTangent, endTangent);
			Cubic cubic = fit.cubic();
			double longest = chain.length(0, chain.last());
			double leaving = cubic.control1().minus(start).dot(startTangent);
			double arriving = end.minus(cubic.control2()).dot(endTangent);
			if (leaving > 0 && arriving > 0 && leaving < 2 * longest && arriving < 2 * longest) {
				return cubic;
			}
		}
		double third = chain.length(0, chain.last()) / 3;
		return new Cubic(start, start.plus(startTangent.times(third)), end.minus(endTangent.times(third)), end);
	}

	/** A closed contour along a ring of points, the first of which is not repeated at the end. */
	public Contour fitRing(List<Point> ring) {
		List<Point> mended = new StepMending(Math.min(sampling, tolerance * MENDING)).mended(ring);
		List<Point> thinned = new Thinning(tolerance * THINNING).ring(mended);
		if (thinned.size() < 3) {
			return Contour.polygon(ring);
		}
		CornerFinder corners = new CornerFinder(thinned, true, sampling, cornerAngle);
		int first = firstNode(thinned, corners);
		boolean smooth = !corners.isNode(first);
		Collections.rotate(thinned, -first);
		List<Point> closed = new ArrayList<>(thinned);
		closed.add(thinned.get(0));
		Chain chain = new Chain(closed);
		if (smooth) {
			Point tangent = chain.tangentAtClosure();
			return Contour.closed(run(closed, tangent, tangent));
		}
		CornerFinder turned = new CornerFinder(thinned, true, sampling, cornerAngle);
		List<Integer> nodes = new ArrayList<>();
		for (int i = 0; i < thinned.size(); i++) {
			if (turned.isNode(i)) {
				nodes.add(i);
			}
		}
		nodes.add(chain.last());
		return Contour.closed(alongNodes(chain, nodes, turned, null, null));
	}

	/** The topmost node if there is one, else the topmost point. */
	private static int firstNode(List<Point> points, CornerFinder corners) {
		int first = 0;
		for (int i = 1; i < points.size(); i++) {
			boolean node = corners.isNode(i);
			boolean firstIsNode = corners.isNode(first);
			if (node != firstIsNode ? node : isAbove(points.get(i), points.get(first))) {
				first = i;
			}
		}
		return first;
	}

	private static boolean isAbove(Point a, Point b) {
		return a.y() != b.y() ? a.y() < b.y() : a.x() < b.x();
	}

	private List<Segment> alongNodes(Chain chain, List<Integer> nodes, CornerFinder corners, Point startTangent,
			Point endTangent) {
		List<Segment> segments = new ArrayList<>();
		for (int i = 1; i < nodes.size(); i++) {
			int from = nodes.get(i - 1);
			int to = nodes.get(i);
			if (to == from + 1) {
				segments.add(new Line(chain.point(from), chain.point(to)));
				continue;
			}
			boolean first = i == 1;
			boolean last = i == nodes.size() - 1;
			segments.addAll(run(chain.points(from, to),
					first && startTangent != null ? startTangent : leaving(from, to, chain, corners),
					last && endTangent != null ? endTangent : arriving(from, to, chain, corners)));
		}
		return segments;
	}

	/** What is fitted to a run depends on nothing but its points and the directions at its ends. */
	private List<Segment> run(List<Point> points, Point startTangent, Point endTangent) {
		monitor.check();
		record Key(List<Point> points, Point startTangent, Point endTangent, double tolerance) {
		}
		return memory.get(new Key(List.copyOf(points), startTangent, endTangent, tolerance),
				() -> new RunFitter(new Chain(points), tolerance).fit(startTangent, endTangent));
	}

	/**
	 * Direction at the start of a run: of the straight edge before it, or null at a corner, where the fit may choose.
	 * Not so at the tip of a thin spike, whose sides must not change places.
	 */
	private static Point leaving(int node, int end, Chain chain, CornerFinder corners) {
		if (corners.isSpike(node)) {
			return chain.tangent(node, node, end);
		}
		if (corners.isCorner(node)) {
			return null;
		}
		int before = node == 0 ? chain.last() - 1 : node - 1;
		return chain.point(node).minus(chain.point(before)).unit();
	}

	/** Direction at the end of a run; see {@link #leaving}. */
	private static Point arriving(int start, int node, Chain chain, CornerFinder corners) {
		int vertex = node == chain.last() && corners.isClosed() ? 0 : node;
		if (corners.isSpike(vertex)) {
			return chain.tangent(node, start, node);
		}
		if (corners.isCorner(vertex)) {
			return null;
		}
		return chain.point(vertex + 1).minus(chain.point(vertex)).unit();
	}
}
