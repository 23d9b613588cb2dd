package org.frisket.print.contour;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.fit.CurveFitter;

/** Gives a ring of points about a pixel apart few lines and cubics. Lengths are in pixels. */
final class RingFitter {

	/** Of the deviation, for what is taken as straight. */
	private static final double STRAIGHT = 0.4;
	/** A corner goes no farther for the sake of the straight lines beside it. */
	private static final double REACH = 1.5;
	/** Corners are known here: the fitter is to find none. */
	private static final double NO_CORNER = Math.toRadians(100);

	/** Of the deviation: what stands off a curve no more than this, by the unevenness of the points, is no straight edge. */
	private static final double UNEVEN = 2;

	private final double slack;
	private final boolean cornered;
	private final CurveFitter fitter;

	/**
	 * @param deviation how far the curves may lie from the points
	 * @param cornered  whether sides are prolonged to corners; else these are rounded as the points are
	 */
	RingFitter(double deviation, boolean cornered) {
		this.cornered = cornered;
		slack = STRAIGHT * deviation;
		fitter = new CurveFitter(new Tolerance(deviation), UNEVEN * deviation, NO_CORNER);
	}

	Contour fit(Ring ring) {
		List<CornerSearch.Corner> corners = cornered ? CornerSearch.of(ring) : List.of();
		if (corners.isEmpty()) {
			return fitter.fitRing(Calming.ring(ring.points()));
		}
		List<Stretch> stretches = new ArrayList<>();
		for (int i = 0; i < corners.size(); i++) {
			int next = i + 1 < corners.size() ? corners.get(i + 1).index() : corners.get(0).index() + ring.size();
			stretches.add(Stretch.between(ring, corners.get(i).index(), next, slack));
		}
		List<Point> places = new ArrayList<>();
		for (int i = 0; i < corners.size(); i++) {
			places.add(place(corners.get(i).place(), stretches.get((i + corners.size() - 1) % corners.size()),
					stretches.get(i)));
		}
		List<Segment> segments = new ArrayList<>();
		for (int i = 0; i < corners.size(); i++) {
			add(places.get(i), stretches.get(i), places.get((i + 1) % corners.size()), segments);
		}
		return segments.size() > 1 ? Contour.closed(segments) : fitter.fitRing(Calming.ring(ring.points()));
	}

	/** Straight lines, known by many points, say best where a corner is. */
	private static Point place(Point corner, Stretch before, Stretch after) {
		Point better = corner;
		if (before.isLine() && after.isLine()) {
			better = before.meeting(after);
		} else if (before.isLine()) {
			better = before.nearest(corner);
		} else if (after.isLine()) {
			better = after.nearest(corner);
		}
		return better.isFinite() && better.distance(corner) <= REACH ? better : corner;
	}

	private void add(Point start, Stretch stretch, Point end, List<Segment> segments) {
		if (stretch.straight() && !start.equals(end)) {
			segments.add(new Line(start, end));
			return;
		}
		List<Point> points = new ArrayList<>(stretch.points().size() + 2);
		points.add(start);
		points.addAll(Calming.run(stretch.points()));
		points.add(end);
		if (!start.equals(end)) {
			segments.addAll(fitter.fitRun(points));
			return;
		}
		// once round from a single corner: parted where it is farthest away, with no kink there
		int middle = 1;
		for (int i = 2; i < points.size() - 1; i++) {
			if (points.get(i).distance(start) > points.get(middle).distance(start)) {
				middle = i;
			}
		}
		int reach = Math.min(3, Math.min(middle, points.size() - 1 - middle));
		Point along = points.get(middle + reach).minus(points.get(middle - reach)).unit();
		segments.addAll(fitter.fitRun(points.subList(0, middle + 1), null, along));
		segments.addAll(fitter.fitRun(points.subList(middle, points.size()), along, null));
	}
}
