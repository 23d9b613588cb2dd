package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.measure.NearestChord;
import org.frisket.geometry.repair.Artwork;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Stretches of the contours of areas that bound nothing once the areas are one: both their sides are filled, or neither
 * is. Those whose sides are alike only within the tolerance count too: what lies between is narrower than that. Rays
 * tell; how areas are united is not asked.
 */
public final class Covered {

	/** Parts of the tolerance: for flattening, and how near a stretch may be to what is left to be left out. */
	private static final double FLATTENING = 0.02;
	private static final double NEAR = 0.1;
	private static final double CLOSE_BY = 0.05;
	private static final double SHORTEST = 0.25;

	private final double tolerance;
	private final Filling filling;
	private final NearestChord left;
	private final STRtree chords = new STRtree();
	private final LineIntersector intersector = new RobustLineIntersector();
	private final List<Contour> found = new ArrayList<>();
	private List<Line> current = new ArrayList<>();

	private Covered(List<Artwork.Area> areas, List<Contour> after, double tolerance) {
		this.tolerance = tolerance;
		filling = new Filling(areas, FLATTENING * tolerance);
		left = new NearestChord(after, FLATTENING * tolerance);
		for (Artwork.Area area : areas) {
			for (Contour contour : area.outline().contours()) {
				contour.segments().forEach(segment -> chords(segment).forEach(
						chord -> chords.insert(new Envelope(chord.p0, chord.p1), chord)));
			}
		}
	}

	/** @param after what is left of the contours of the areas */
	public static List<Contour> stretches(List<Artwork.Area> areas, List<Contour> after, double tolerance, Monitor monitor) {
		Set<Segment> known = new HashSet<>();
		for (Contour contour : after) {
			known.addAll(contour.segments());
			contour.segments().forEach(segment -> known.add(segment.reversed()));
		}
		Covered covered = null;
		for (Artwork.Area area : areas) {
			monitor.check();
			for (Contour contour : area.outline().contours()) {
				for (Segment segment : contour.segments()) {
					if (!known.contains(segment)) {
						covered = covered == null ? new Covered(areas, after, tolerance) : covered;
						covered.chords(segment).forEach(covered::look);
					}
				}
			}
		}
		return covered == null ? List.of() : covered.found();
	}

	private List<Contour> found() {
		if (!current.isEmpty()) {
			found.add(Contour.open(current));
			current = new ArrayList<>();
		}
		return found;
	}

	private List<LineSegment> chords(Segment segment) {
		List<LineSegment> along = new ArrayList<>();
		Point[] last = { segment.start() };
		segment.flatten(FLATTENING * tolerance, t -> {
			Point next = segment.at(t);
			along.add(new LineSegment(last[0].x(), last[0].y(), next.x(), next.y()));
			last[0] = next;
		});
		return along;
	}

	/** From one crossing to the next a chord is covered or not as a whole. */
	private void look(LineSegment chord) {
		Point start = new Point(chord.p0.x, chord.p0.y);
		Point end = new Point(chord.p1.x, chord.p1.y);
		if (left.isAlong(start, end, NEAR * tolerance)) {
			return;
		}
		Point middle = start.towards(end, 0.5);
		double off = Double.POSITIVE_INFINITY;
		double most = Double.POSITIVE_INFINITY;
		if (!left.isEmpty()) {
			LineSegment nearest = left.to(middle);
			off = NearestChord.distance(nearest, middle);
			most = Math.max(NearestChord.distance(nearest, start), NearestChord.distance(nearest, end));
		}
		boolean isShort = start.distance(end) <= SHORTEST * tolerance;
		if (isShort || off > NEAR * tolerance && !crosses(chord)) {
			if (off > NEAR * tolerance && isCovered(middle, end.minus(start).unit().quarterTurn())) {
				add(start, end);
				return;
			}
			if (isShort || off <= tolerance && most <= tolerance) {
				return;
			}
			if (start.distance(end) <= 2 * tolerance) {
				return;
			}
		}
		look(new LineSegment(chord.p0, new Coordinate(middle.x(), middle.y())));
		look(new LineSegment(new Coordinate(middle.x(), middle.y()), chord.p1));
	}

	private boolean crosses(LineSegment chord) {
		for (Object item : chords.query(new Envelope(chord.p0, chord.p1))) {
			LineSegment other = (LineSegment) item;
			intersector.computeIntersection(chord.p0, chord.p1, other.p0, other.p1);
			if (intersector.hasIntersection() && intersector.isInteriorIntersection(0)) {
				return true;
			}
		}
		return false;
	}

	private boolean isCovered(Point place, Point aside) {
		return isCovered(place, aside, CLOSE_BY * tolerance) || isCovered(place, aside, tolerance);
	}

	private boolean isCovered(Point place, Point aside, double distance) {
		return filling.at(place.plus(aside.times(distance))) == filling.at(place.minus(aside.times(distance)));
	}

	private void add(Point start, Point end) {
		if (!current.isEmpty() && !current.get(current.size() - 1).end().equals(start)) {
			found();
		}
		current.add(new Line(start, end));
	}
}
