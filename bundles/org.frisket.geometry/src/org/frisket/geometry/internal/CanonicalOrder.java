package org.frisket.geometry.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** The one order in which the parts of a region stand, so that equal regions are equal lists. */
public final class CanonicalOrder {

	/** Top to bottom, then left to right. */
	private static final Comparator<Point> PLACES = Comparator.comparingDouble(Point::y).thenComparingDouble(Point::x);

	private static final Comparator<Contour> CONTOURS = Comparator.comparing(Contour::start, PLACES)
			.thenComparing(Contour::bounds, Comparator.comparingDouble(b -> b.maxX()))
			.thenComparingInt(Contour::nodeCount);

	private CanonicalOrder() {
	}

	/** The same closed contour, starting at its topmost node, the leftmost of several. */
	public static Contour startedAtTop(Contour contour) {
		List<Segment> segments = contour.segments();
		int first = 0;
		for (int i = 1; i < segments.size(); i++) {
			if (isBefore(segments.get(i).start(), segments.get(first).start())) {
				first = i;
			}
		}
		if (first == 0) {
			return contour;
		}
		List<Segment> turned = new ArrayList<>(segments.subList(first, segments.size()));
		turned.addAll(segments.subList(0, first));
		return Contour.closed(turned);
	}

	/** As {@link #PLACES} has it, for the many nodes of which hardly any two are level. */
	private static boolean isBefore(Point one, Point other) {
		return one.y() < other.y() || one.y() == other.y() && PLACES.compare(one, other) < 0;
	}

	/** The pieces with all contours started at their top, holes and pieces sorted by that place. */
	public static List<Piece> sorted(List<Piece> pieces) {
		List<Piece> sorted = new ArrayList<>(pieces.size());
		for (Piece piece : pieces) {
			sorted.add(new Piece(startedAtTop(piece.outer()),
					piece.holes().stream().map(CanonicalOrder::startedAtTop).sorted(CONTOURS).toList()));
		}
		sorted.sort(Comparator.comparing(Piece::outer, CONTOURS));
		return sorted;
	}
}
