package org.frisket.geometry.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The smallest convex shape about a region, as a taut thread would lie about it. Where the thread lies on the region it
 * has the region's own curves.
 */
public final class ConvexHull {

	private static final double SAMPLING_SHARE = 0.125;

	/** A place on a segment, at the parameter {@code from}, and where on it the next place lies. */
	private record Sample(int contour, int number, Segment segment, double from, double to) {
	}

	private final List<List<Sample>> contours = new ArrayList<>();
	private final Map<Coordinate, Sample> samples = new HashMap<>();

	private ConvexHull(Region region, double deviation) {
		for (Piece piece : region.pieces()) {
			List<Sample> ring = new ArrayList<>();
			for (Segment segment : piece.outer().segments()) {
				double[] before = { 0 };
				segment.flatten(deviation, t -> {
					ring.add(new Sample(contours.size(), ring.size(), segment, before[0], t));
					before[0] = t;
				});
			}
			ring.forEach(sample -> samples.putIfAbsent(coordinate(sample.segment.at(sample.from)), sample));
			contours.add(ring);
		}
	}

	/**
	 * @return empty for an empty region, otherwise one piece without holes
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Region of(Region region, Tolerance tolerance, Monitor monitor) {
		if (region.isEmpty()) {
			return region;
		}
		Contour hull = new ConvexHull(region, tolerance.mm() * SAMPLING_SHARE).contour();
		monitor.check();
		return new OutlineCleaner().clean(Outline.of(hull), FillRule.NON_ZERO, tolerance, monitor).region();
	}

	private Contour contour() {
		Geometry hull = new org.locationtech.jts.algorithm.ConvexHull(
				samples.keySet().toArray(Coordinate[]::new), Polygons.factory()).getConvexHull();
		Coordinate[] ring = hull.getCoordinates();
		// as outer contours run
		boolean reversed = Orientation.isCCW(ring);
		List<Sample> corners = new ArrayList<>();
		for (int i = 0; i < ring.length - 1; i++) {
			corners.add(samples.get(ring[reversed ? ring.length - 1 - i : i]));
		}
		return woven(corners);
	}

	private Contour woven(List<Sample> corners) {
		int first = firstOfRun(corners);
		List<Segment> segments = new ArrayList<>();
		for (int i = 0; i < corners.size();) {
			Sample corner = corners.get((first + i) % corners.size());
			int run = 0;
			while (i + run < corners.size() && follows(corners, first + i + run)
					&& corners.get((first + i + run) % corners.size()).segment == corner.segment) {
				run++;
			}
			Sample last = corners.get((first + i + Math.max(0, run - 1)) % corners.size());
			Point start = corner.segment.at(corner.from);
			Sample next = corners.get((first + i + Math.max(1, run)) % corners.size());
			Point end = next.segment.at(next.from);
			segments.add(run == 0 ? new Line(start, end)
					: corner.segment.between(corner.from, last.to).withEnds(start, end));
			i += Math.max(1, run);
		}
		return Contour.closed(segments);
	}

	/** Not within a run along one segment, unless there is nothing else. */
	private int firstOfRun(List<Sample> corners) {
		for (int i = 0; i < corners.size(); i++) {
			int before = (i + corners.size() - 1) % corners.size();
			if (!follows(corners, before) || corners.get(before).segment != corners.get(i).segment) {
				return i;
			}
		}
		return 0;
	}

	/** Whether the contour itself leads from a corner of the hull to the next. */
	private boolean follows(List<Sample> corners, int index) {
		Sample one = corners.get(index % corners.size());
		Sample next = corners.get((index + 1) % corners.size());
		return one.contour == next.contour
				&& (one.number + 1) % contours.get(one.contour).size() == next.number;
	}

	private static Coordinate coordinate(Point point) {
		return new Coordinate(point.x(), point.y());
	}
}
