package org.frisket.geometry.internal.outset;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** Segments for rims: lines for straight ones, for the others cubics that leave and arrive as the rim does. */
final class RimCurves {

	/** By how much of its radius a cubic misses a quarter of a circle; it grows with the sixth power of the angle. */
	private static final double QUARTER_MISS = 2.7253e-4;
	private static final double WIDEST_ARC = 2 * Math.PI / 3;

	private static final int HALVINGS = 12;

	private final double tolerance;
	private final RimFit fit;
	private final double[] place = new double[4];

	/** @param tolerance how far in mm a cubic may miss its rim */
	RimCurves(double tolerance) {
		this.tolerance = tolerance;
		fit = new RimFit(tolerance);
	}

	/** The whole loop as a contour that runs the way of the rims. */
	Contour contour(Loop loop, Monitor monitor) {
		List<Segment> segments = new ArrayList<>();
		List<Rim> rims = loop.rims();
		int at = 0;
		while (at < rims.size()) {
			monitor.check();
			Rim rim = rims.get(at++);
			while (at < rims.size() && rims.get(at).foot == rim.foot && rims.get(at).from == rim.to) {
				rim = new Rim(rim.foot, rim.from, rims.get(at++).to, rim.distance);
			}
			add(rim, segments);
		}
		return Contour.closed(joined(segments));
	}

	/** Neighbours end in the same place but for rounding, or for the turn of a joint that passes for smooth. */
	private static List<Segment> joined(List<Segment> segments) {
		List<Segment> joined = new ArrayList<>(segments.size());
		Point start = node(segments.get(segments.size() - 1), segments.get(0));
		Point first = start;
		for (int i = 0; i < segments.size(); i++) {
			Segment segment = segments.get(i);
			Point end = i + 1 < segments.size() ? node(segment, segments.get(i + 1)) : first;
			if (!start.equals(end)) {
				joined.add(segment.withEnds(start, end));
			}
			start = end;
		}
		return joined;
	}

	private static Point node(Segment before, Segment after) {
		return before.end().equals(after.start()) ? before.end() : before.end().towards(after.start(), 0.5);
	}

	private void add(Rim rim, List<Segment> segments) {
		if (rim.foot instanceof LineFoot) {
			segments.add(new Line(point(rim, rim.from), point(rim, rim.to)));
		} else if (rim.foot instanceof CornerFoot) {
			addArc(rim, segments);
		} else {
			addCubics(rim, rim.from, rim.to, HALVINGS, segments);
		}
	}

	private Point point(Rim rim, double t) {
		rim.at(t, place);
		return new Point(place[0], place[1]);
	}

	private void addArc(Rim rim, List<Segment> segments) {
		double turn = rim.to - rim.from;
		double widest = Math.min(WIDEST_ARC,
				Math.PI / 2 * Math.pow(tolerance / (QUARTER_MISS * rim.distance), 1.0 / 6));
		int count = (int) Math.max(1, Math.ceil(turn / widest - 1e-9));
		double handle = 4.0 / 3 * Math.tan(turn / count / 4);
		for (int i = 0; i < count; i++) {
			rim.at(rim.from + turn * i / count, place);
			Point start = new Point(place[0], place[1]);
			Point leaving = new Point(place[2], place[3]);
			rim.at(i + 1 == count ? rim.to : rim.from + turn * (i + 1) / count, place);
			Point end = new Point(place[0], place[1]);
			Point arriving = new Point(place[2], place[3]);
			segments.add(new Cubic(start, start.plus(leaving.times(handle)), end.minus(arriving.times(handle)), end));
		}
	}

	private void addCubics(Rim rim, double from, double to, int halvings, List<Segment> segments) {
		Cubic cubic = fit.of(rim, from, to);
		if (cubic != null) {
			segments.add(cubic);
		} else if (halvings == 0) {
			segments.add(new Line(point(rim, from), point(rim, to)));
		} else {
			double middle = (from + to) / 2;
			addCubics(rim, from, middle, halvings - 1, segments);
			addCubics(rim, middle, to, halvings - 1, segments);
		}
	}
}
