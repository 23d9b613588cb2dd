package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** Moves the nodes of a contour so that its nearly level and nearly plumb lines are so. */
final class Levelling {

	/** Of the length of a line: one that stands further off is slanted, however short it is. */
	private static final double SLANT = 0.1;

	private final double off;
	/** How far a node may move along each axis. */
	private final double reach;

	/**
	 * @param off   how far in mm a line may stand off from one end to the other to be put straight
	 * @param reach how far in mm anything may move
	 */
	Levelling(double off, double reach) {
		this.off = off;
		this.reach = reach / Math.sqrt(2);
	}

	/** The contour itself if nothing is to be done, or if it would not stay as it is then. */
	Contour of(Contour contour) {
		Contour level = once(contour);
		return level == contour || once(level) == level ? level : contour;
	}

	/** The furthest that any node has come. */
	double moved(Contour from, Contour to) {
		double most = 0;
		for (int i = 0; i < from.segments().size(); i++) {
			most = Math.max(most, from.segments().get(i).start().distance(to.segments().get(i).start()));
			most = Math.max(most, from.segments().get(i).end().distance(to.segments().get(i).end()));
		}
		return most;
	}

	private Contour once(Contour contour) {
		List<Segment> segments = contour.segments();
		double[] x = settled(contour, Point::x, Point::y);
		double[] y = settled(contour, Point::y, Point::x);
		List<Segment> moved = new ArrayList<>();
		boolean changed = false;
		for (int i = 0; i < segments.size(); i++) {
			int next = (i + 1) % x.length;
			Segment segment = segments.get(i).withEnds(new Point(x[i], y[i]), new Point(x[next], y[next]));
			changed |= !segment.equals(segments.get(i));
			if (segment.start().equals(segment.end()) && !segments.get(i).start().equals(segments.get(i).end())) {
				// what has lost its extent is not put straight
				return contour;
			}
			moved.add(segment);
		}
		if (!changed) {
			return contour;
		}
		return contour.isClosed() ? Contour.closed(moved) : Contour.open(moved);
	}

	/** Where the nodes come to lie across lines that run along the other axis. */
	private double[] settled(Contour contour, ToDoubleFunction<Point> across, ToDoubleFunction<Point> along) {
		List<Segment> segments = contour.segments();
		int count = segments.size();
		int nodes = contour.isClosed() ? count : count + 1;
		double[] places = new double[nodes];
		boolean[] level = new boolean[count];
		for (int i = 0; i < count; i++) {
			Segment segment = segments.get(i);
			places[i] = across.applyAsDouble(segment.start());
			places[(i + 1) % nodes] = across.applyAsDouble(segment.end());
			double aside = Math.abs(across.applyAsDouble(segment.end()) - across.applyAsDouble(segment.start()));
			double way = Math.abs(along.applyAsDouble(segment.end()) - along.applyAsDouble(segment.start()));
			level[i] = segment instanceof Line && aside <= off && aside <= SLANT * way;
		}
		int first = contour.isClosed() ? firstSlanted(level) : 0;
		int from = first;
		while (from < first + count) {
			int to = from;
			while (to < first + count && level[to % count]) {
				to++;
			}
			settle(places, from, to);
			from = to + 1;
		}
		return places;
	}

	private static int firstSlanted(boolean[] level) {
		int first = 0;
		while (first < level.length && level[first]) {
			first++;
		}
		return first % level.length;
	}

	/** Nodes of one run come to its middle, if none of them has too far to go. */
	private void settle(double[] places, int from, int to) {
		double least = Double.POSITIVE_INFINITY;
		double most = Double.NEGATIVE_INFINITY;
		for (int i = from; i <= to; i++) {
			least = Math.min(least, places[i % places.length]);
			most = Math.max(most, places[i % places.length]);
		}
		if (to > from && most > least && most - least <= 2 * reach) {
			for (int i = from; i <= to; i++) {
				places[i % places.length] = least + (most - least) / 2;
			}
		}
	}
}
