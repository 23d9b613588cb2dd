package org.frisket.geometry.measure;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.locationtech.jts.geom.LineSegment;

/**
 * The furthest that any place of some contours lies from others: one direction of the Hausdorff distance, which is the
 * larger of both.
 *
 * @param mm      0 if there is nothing to stray, infinite if there is nothing to stray from
 * @param place   where; null if nothing strays
 * @param exactTo the true distance is less than this further, or less far, in mm
 */
public record Straying(double mm, Point place, double exactTo) {

	/** Of the accuracy: for each of the two flattenings, and for the search. */
	private static final double FLATTENING = 0.4;
	private static final double SEARCH = 0.2;

	/** Whether nothing strays further, as far as that is known. */
	public boolean isWithin(double distance) {
		return mm <= distance + exactTo;
	}

	/**
	 * By branch and bound: a chord is halved as long as it may hold a place further off than the furthest one known.
	 * Along a chord the distance from one straight chord is convex, so that its ends bound it.
	 *
	 * @param accuracy in mm, positive
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static Straying of(List<Contour> contours, List<Contour> from, double accuracy, Monitor monitor) {
		Set<Segment> known = new HashSet<>();
		for (Contour contour : from) {
			known.addAll(contour.segments());
			contour.segments().forEach(segment -> known.add(segment.reversed()));
		}
		Search search = new Search(new NearestChord(from, FLATTENING * accuracy), SEARCH * accuracy);
		for (Contour contour : contours) {
			monitor.check();
			for (Segment segment : contour.segments()) {
				if (!known.contains(segment)) {
					search.along(segment, FLATTENING * accuracy);
				}
			}
		}
		return new Straying(search.most, search.place, accuracy);
	}

	private static final class Search {

		private final NearestChord nearest;
		private final double accuracy;
		private double most;
		private Point place;

		Search(NearestChord nearest, double accuracy) {
			this.nearest = nearest;
			this.accuracy = accuracy;
		}

		private record Stretch(Point start, Point end) {
		}

		void along(Segment segment, double deviation) {
			if (nearest.isEmpty()) {
				most = Double.POSITIVE_INFINITY;
				place = segment.start();
				return;
			}
			Deque<Stretch> open = new ArrayDeque<>();
			Point[] last = { segment.start() };
			segment.flatten(deviation, t -> {
				Point next = segment.at(t);
				open.push(new Stretch(last[0], next));
				last[0] = next;
			});
			while (!open.isEmpty()) {
				Stretch stretch = open.pop();
				if (nearest.isAlong(stretch.start, stretch.end, most + accuracy)) {
					continue;
				}
				look(stretch.start);
				look(stretch.end);
				Point middle = stretch.start.towards(stretch.end, 0.5);
				LineSegment chord = look(middle);
				double bound = Math.max(NearestChord.distance(chord, stretch.start),
						NearestChord.distance(chord, stretch.end));
				double reach = NearestChord.distance(chord, middle) + stretch.start.distance(stretch.end) / 2;
				if (Math.min(bound, reach) > most + accuracy) {
					open.push(new Stretch(stretch.start, middle));
					open.push(new Stretch(middle, stretch.end));
				}
			}
		}

		private LineSegment look(Point point) {
			LineSegment chord = nearest.to(point);
			double distance = NearestChord.distance(chord, point);
			if (distance > most) {
				most = distance;
				place = point;
			}
			return chord;
		}
	}
}
