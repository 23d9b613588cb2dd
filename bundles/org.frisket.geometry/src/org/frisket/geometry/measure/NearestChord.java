package org.frisket.geometry.measure;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.strtree.ItemBoundable;
import org.locationtech.jts.index.strtree.STRtree;

/** Chords of contours, for asking which of them is nearest. Not for several threads at once. */
public final class NearestChord {

	private final STRtree tree = new STRtree();
	private final Envelope box = new Envelope();

	/** @param deviation in mm at which curves are flattened */
	public NearestChord(List<Contour> contours, double deviation) {
		for (Contour contour : contours) {
			for (Segment segment : contour.segments()) {
				Point[] last = { segment.start() };
				segment.flatten(deviation, t -> {
					Point next = segment.at(t);
					LineSegment chord = new LineSegment(last[0].x(), last[0].y(), next.x(), next.y());
					tree.insert(new Envelope(chord.p0, chord.p1), chord);
					last[0] = next;
				});
			}
		}
		tree.build();
	}

	/** @throws IllegalStateException if there is no chord at all */
	public LineSegment to(Point point) {
		Coordinate asked = new Coordinate(point.x(), point.y());
		box.init(asked);
		Object nearest = tree.nearestNeighbour(box, asked, NearestChord::distance);
		if (nearest == null) {
			throw new IllegalStateException("no chords");
		}
		return (LineSegment) nearest;
	}

	/** Whether one of the chords is nowhere further than a reach from a straight way; then all of the way is near. */
	public boolean isAlong(Point start, Point end, double reach) {
		box.init(start.x(), end.x(), start.y(), end.y());
		box.expandBy(reach);
		boolean[] along = { false };
		Coordinate from = new Coordinate(start.x(), start.y());
		Coordinate to = new Coordinate(end.x(), end.y());
		tree.query(box, item -> {
			LineSegment chord = (LineSegment) item;
			along[0] = along[0] || chord.distance(from) <= reach && chord.distance(to) <= reach;
		});
		return along[0];
	}

	public boolean isEmpty() {
		return tree.isEmpty();
	}

	private static double distance(ItemBoundable one, ItemBoundable other) {
		return one.getItem() instanceof LineSegment chord ? chord.distance((Coordinate) other.getItem())
				: ((LineSegment) other.getItem()).distance((Coordinate) one.getItem());
	}

	/** In mm. */
	public static double distance(LineSegment chord, Point point) {
		return chord.distance(new Coordinate(point.x(), point.y()));
	}
}
