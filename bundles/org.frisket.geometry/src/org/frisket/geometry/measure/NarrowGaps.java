package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** All places at which cuts come nearer to each other than a width. */
public final class NarrowGaps {

	private static final double FLATTENING = 0.25;
	/** Of the tolerance: as narrow as this is only what narrows to a point. */
	private static final double POINTED = 4;

	/** Of the width: hollows that are less deep, as between the stem and the arm of an r, are no slits. */
	private static final double DEEP = 3;

	/**
	 * Between two pieces.
	 *
	 * @param one   its number, less than {@code other}
	 * @param mm    their least distance
	 * @param place in the middle between them
	 */
	public record Between(int one, int other, double mm, Point place) {
	}

	private record Flat(Polygon polygon, IndexedFacetDistance edges) {
	}

	private NarrowGaps() {
	}

	/**
	 * The pairs of pieces whose edges come nearer than {@code width} but do not meet, each once, where it is nearest; in
	 * the order of the pieces.
	 *
	 * @param memory of pieces that are the same, at the same place
	 */
	public static List<Between> between(List<Piece> pieces, double width, Tolerance tolerance, Memory memory,
			Monitor monitor) {
		STRtree tree = new STRtree();
		for (int i = 0; i < pieces.size(); i++) {
			tree.insert(envelope(pieces.get(i).bounds()), i);
		}
		List<Between> found = new ArrayList<>();
		for (int i = 0; i < pieces.size(); i++) {
			monitor.check();
			Envelope reach = envelope(pieces.get(i).bounds());
			reach.expandBy(width);
			List<Integer> near = new ArrayList<>();
			for (Object other : tree.query(reach)) {
				if ((Integer) other < i) {
					near.add((Integer) other);
				}
			}
			near.sort(null);
			for (int other : near) {
				Flat one = flat(pieces.get(other), tolerance, memory);
				Flat two = flat(pieces.get(i), tolerance, memory);
				if (one.edges().isWithinDistance(two.polygon(), width)) {
					Coordinate[] nearest = one.edges().nearestPoints(two.polygon());
					double gap = nearest[0].distance(nearest[1]);
					if (gap > tolerance.mm() && gap < width) {
						found.add(new Between(other, i, gap,
								new Point((nearest[0].x + nearest[1].x) / 2, (nearest[0].y + nearest[1].y) / 2)));
					}
				}
			}
		}
		return found;
	}

	private static Flat flat(Piece piece, Tolerance tolerance, Memory memory) {
		record Key(Piece piece, Tolerance tolerance) {
		}
		return memory.get(new Key(piece, tolerance), () -> {
			Polygon polygon = Polygons.of(piece, tolerance.mm() * FLATTENING);
			return new Flat(polygon, new IndexedFacetDistance(polygon));
		});
	}

	/**
	 * The slits that lead into a piece from outside, are narrower than {@code width} and three times as deep as that. What
	 * narrows to a point is none.
	 *
	 * @param memory of pieces that are the same but for their place
	 */
	public static List<StrokeWidths.Width> slits(Piece piece, double width, Tolerance tolerance, Memory memory,
			Monitor monitor) {
		record Key(Likeness outer, double width, Tolerance tolerance) {
		}
		Piece solid = new Piece(piece.outer(), List.of());
		Point origin = piece.outer().start();
		List<StrokeWidths.Width> slits = memory.get(new Key(Likeness.of(solid), width, tolerance), () -> {
			Contour outer = piece.outer().transformed(Transform.translation(-origin.x(), -origin.y()));
			if (isConvex(outer)) {
				return List.of();
			}
			Bounds frame = outer.bounds().grown(4 * width);
			Piece outside = new Piece(frame(frame), List.of(outer.reversed()));
			// with a tolerance as coarse as that only what is so deep counts
			return StrokeWidths.of(outside, tolerance, monitor).thinnerThan(width, new Tolerance(DEEP * width)).stream()
					.filter(slit -> slit.mm() > POINTED * tolerance.mm()).toList();
		});
		return slits.stream().map(slit -> new StrokeWidths.Width(slit.mm(), slit.place().plus(origin))).toList();
	}

	/** Nothing leads into what turns one way only. */
	private static boolean isConvex(Contour contour) {
		Segment before = contour.segments().get(contour.segments().size() - 1);
		for (Segment segment : contour.segments()) {
			Point middle = segment.at(0.5);
			if (segment.derivative(0.5).length() == 0
					|| before.endTangent().cross(segment.startTangent()) > 1e-6
					|| segment.startTangent().cross(middle.minus(segment.start())) > 1e-9
					|| segment.startTangent().cross(segment.endTangent()) > 1e-6) {
				return false;
			}
			before = segment;
		}
		return true;
	}

	private static Contour frame(Bounds box) {
		return Contour.polygon(List.of(new Point(box.minX(), box.minY()), new Point(box.minX(), box.maxY()),
				new Point(box.maxX(), box.maxY()), new Point(box.maxX(), box.minY())));
	}

	private static Envelope envelope(Bounds bounds) {
		return new Envelope(bounds.minX(), bounds.maxX(), bounds.minY(), bounds.maxY());
	}
}
