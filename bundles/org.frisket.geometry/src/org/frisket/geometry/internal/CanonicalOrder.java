package org.frisket.geometry.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** The one order in which the parts of a region stand, so that equal regions are equal lists. */
public final class CanonicalOrder {

	/** Top to bottom, then left to right. */
	private static final Comparator<Point> PLACES = Comparator.comparingDouble(Point::y).thenComparingDouble(Point::x);

	private static final Comparator<Contour> CONTOURS = ((Comparator<Contour>) CanonicalOrder::compareStarts)
			.thenComparing(Contour::bounds, Comparator.comparingDouble(b -> b.maxX()))
			.thenComparingInt(Contour::nodeCount);

	/** In mm; of coordinates up to a kilometre. */
	private static final double MOST_ROUNDING = 1e-9;

	private CanonicalOrder() {
	}

	/** As {@link #PLACES} has it; pieces of long texts are many. */
	private static int compareStarts(Contour one, Contour other) {
		Point first = one.start();
		Point second = other.start();
		int byHeight = Double.compare(first.y(), second.y());
		return byHeight != 0 ? byHeight : Double.compare(first.x(), second.x());
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
		return merged(sorted);
	}

	/** The same for pieces of several results that are each in order: only the pieces are sorted. */
	public static List<Piece> merged(List<Piece> pieces) {
		List<Piece> sorted = new ArrayList<>(pieces);
		sorted.sort(Comparator.comparing(Piece::outer, CONTOURS));
		return sorted;
	}

	/**
	 * Whether pieces in order stay in order wherever they are moved: no two coordinates of nodes are so near to each
	 * other that rounding could make them equal.
	 */
	public static boolean outlastsMoves(List<Piece> pieces) {
		return isSpread(pieces, Point::x) && isSpread(pieces, Point::y);
	}

	private static boolean isSpread(List<Piece> pieces, ToDoubleFunction<Point> coordinate) {
		double[] sorted = pieces.stream().flatMap(piece -> piece.contours().stream())
				.flatMap(contour -> contour.segments().stream()).map(Segment::start).mapToDouble(coordinate).sorted()
				.toArray();
		for (int i = 1; i < sorted.length; i++) {
			if (sorted[i] != sorted[i - 1] && sorted[i] - sorted[i - 1] < MOST_ROUNDING) {
				return false;
			}
		}
		return true;
	}
}
