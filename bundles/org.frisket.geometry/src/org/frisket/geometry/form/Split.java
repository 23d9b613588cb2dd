package org.frisket.geometry.form;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.clean.RegionBoolean;

/**
 * The two parts of a region on either side of a line. Both have the line's own curves at the cut, without a gap between
 * them. An open line goes on straight beyond its ends, so that it always divides.
 *
 * @param left  on the left of who goes along the line; within a closed line
 * @param right all else
 */
public record Split(Region left, Region right) {

	/**
	 * @throws IllegalArgumentException   if the line has no length
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Split along(Contour line, Region region, Tolerance tolerance, Monitor monitor) {
		if (!(line.length() > 0)) {
			throw new IllegalArgumentException("a line without length");
		}
		Contour edge = line.isClosed() ? line : closedOnTheLeft(line, region.bounds().with(line.bounds()));
		Region side = new OutlineCleaner().clean(Outline.of(edge), FillRule.EVEN_ODD, tolerance, monitor).region();
		RegionBoolean parts = new RegionBoolean();
		return new Split(parts.intersect(region, side, tolerance, monitor),
				parts.subtract(region, side, tolerance, monitor));
	}

	/** The pieces on both sides, the left ones first. */
	public List<Piece> pieces() {
		List<Piece> pieces = new ArrayList<>(left.pieces());
		pieces.addAll(right.pieces());
		return pieces;
	}

	/** Far round everything, from beyond the line's end back to before its start. */
	private static Contour closedOnTheLeft(Contour line, Bounds all) {
		List<Segment> segments = line.segments().stream().filter(segment -> segment.length() > 0).toList();
		Point centre = all.centre();
		double radius = Math.hypot(all.width(), all.height()) + 1;
		Point start = line.start();
		Point end = line.end();
		Point before = onCircle(start, segments.get(0).startTangent().times(-1), centre, radius);
		Point after = onCircle(end, segments.get(segments.size() - 1).endTangent(), centre, radius);
		List<Segment> edge = new ArrayList<>();
		edge.add(new Line(before, start));
		edge.addAll(line.segments());
		edge.add(new Line(end, after));
		Point at = after;
		for (Point corner : way(after, before, centre, radius)) {
			edge.add(new Line(at, corner));
			at = corner;
		}
		edge.add(new Line(at, before));
		return Contour.closed(edge);
	}

	/** Corners of a square about the circle that lie between two of its places, against the clock to the viewer. */
	private static List<Point> way(Point from, Point to, Point centre, double radius) {
		double start = angle(from, centre);
		double sweep = angle(to, centre) - start;
		while (sweep <= 0) {
			sweep += 2 * Math.PI;
		}
		List<Point> corners = new ArrayList<>();
		int steps = (int) Math.max(2, Math.ceil(sweep / (Math.PI / 3)));
		for (int i = 0; i <= steps; i++) {
			double angle = start + sweep * i / steps;
			// chords at this distance stay outside of the circle
			corners.add(centre.plus(new Point(Math.cos(angle), -Math.sin(angle)).times(2 * radius)));
		}
		return corners;
	}

	/** Against the clock to the viewer. */
	private static double angle(Point point, Point centre) {
		return Math.atan2(centre.y() - point.y(), point.x() - centre.x());
	}

	/** Where a ray from within the circle leaves it. */
	private static Point onCircle(Point from, Point direction, Point centre, double radius) {
		Point off = from.minus(centre);
		double half = off.dot(direction);
		double reach = -half + Math.sqrt(half * half + radius * radius - off.dot(off));
		return from.plus(direction.times(reach));
	}
}
