package org.frisket.geometry.internal.repair;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.repair.Artwork;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.intervalrtree.SortedPackedIntervalRTree;

/** Where areas are filled, asked by rays, which has nothing in common with how they are united. */
final class Filling {

	private record Indexed(Bounds bounds, FillRule rule, SortedPackedIntervalRTree chords) {
	}

	private final List<Indexed> areas;

	/** @param deviation in mm at which curves are flattened */
	Filling(List<Artwork.Area> areas, double deviation) {
		this.areas = areas.stream().filter(area -> !area.outline().bounds().isEmpty())
				.map(area -> indexed(area, deviation)).toList();
	}

	private static Indexed indexed(Artwork.Area area, double deviation) {
		SortedPackedIntervalRTree tree = new SortedPackedIntervalRTree();
		for (Contour contour : area.outline().contours()) {
			for (Segment segment : contour.segments()) {
				Point[] last = { segment.start() };
				segment.flatten(deviation, t -> {
					Point next = segment.at(t);
					insert(tree, last[0], next);
					last[0] = next;
				});
			}
			if (!contour.isClosed() && !contour.isEmpty()) {
				insert(tree, contour.end(), contour.start());
			}
		}
		return new Indexed(area.outline().bounds(), area.rule(), tree);
	}

	private static void insert(SortedPackedIntervalRTree tree, Point start, Point end) {
		tree.insert(Math.min(start.y(), end.y()), Math.max(start.y(), end.y()),
				new LineSegment(start.x(), start.y(), end.x(), end.y()));
	}

	/** Whether any of the areas is filled there. */
	boolean at(Point place) {
		for (Indexed area : areas) {
			if (area.bounds.contains(place)) {
				int winding = winding(area.chords, place);
				if (area.rule == FillRule.NON_ZERO ? winding != 0 : winding % 2 != 0) {
					return true;
				}
			}
		}
		return false;
	}

	private static int winding(SortedPackedIntervalRTree chords, Point place) {
		int[] winding = { 0 };
		chords.query(place.y(), place.y(), item -> {
			LineSegment chord = (LineSegment) item;
			boolean down = chord.p0.y <= place.y() && chord.p1.y > place.y();
			boolean up = chord.p1.y <= place.y() && chord.p0.y > place.y();
			if (down || up) {
				double x = chord.p0.x + (place.y() - chord.p0.y) / (chord.p1.y - chord.p0.y) * (chord.p1.x - chord.p0.x);
				if (x > place.x()) {
					winding[0] += down ? 1 : -1;
				}
			}
		});
		return winding[0];
	}
}
