package org.frisket.geometry.offset;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * An offset with mitred or bevelled corners. Every corner within the mitre limit gets its tip, a kite of the
 * corner, the
 * tip and the two ends of the bevel. The tips come from the curves' own tangents, since a chord's direction would throw
 * them off by many times the deviation.
 * <p>
 * If all corners have tips these cover the arcs of a round offset. Else all is bevelled, for which the curves are
 * flattened so finely that a bevel at one of their vertices is within the deviation of an arc; that takes several times
 * as long.
 */
final class SharpOffset {

	/** Lets a corner exactly at the limit keep its tip whatever the rounding. */
	private static final double LIMIT_SLACK = 1e-9;

	private final double distance;
	private final double mitreLimit;
	private final double deviation;
	private final TurnLimitedFlattening flattening;

	SharpOffset(double distance, Corners corners, double deviation) {
		this.distance = distance;
		this.deviation = deviation;
		mitreLimit = corners instanceof Corners.Mitre mitre ? mitre.limit() : 0;
		flattening = new TurnLimitedFlattening(deviation, Math.abs(distance));
	}

	Geometry of(Region region, boolean fillFirst) {
		Region start = fillFirst ? new Region(
				region.pieces().stream().map(p -> new Piece(p.outer(), List.of())).toList()) : region;
		List<Geometry> tips = new ArrayList<>();
		boolean allHaveTips = true;
		for (Contour contour : start.contours()) {
			allHaveTips &= addTips(contour, tips);
		}
		Geometry flattened = allHaveTips ? Polygons.of(start, deviation) : flattening.of(start);
		if (fillFirst) {
			flattened = PolygonOffset.filled(flattened);
		}
		Geometry blunt = allHaveTips ? PolygonOffset.round(flattened, distance, deviation)
				: PolygonOffset.bevelled(flattened, distance);
		if (tips.isEmpty() || blunt.isEmpty()) {
			return blunt;
		}
		return OverlayNGRobust.overlay(blunt, OverlayNGRobust.union(tips),
				distance > 0 ? OverlayNG.UNION : OverlayNG.DIFFERENCE);
	}

	/** Whether no corner is left to be bevelled. */
	private boolean addTips(Contour contour, List<Geometry> tips) {
		List<Segment> segments = contour.segments();
		boolean all = true;
		for (int i = 0; i < segments.size(); i++) {
			Segment before = segments.get(i == 0 ? segments.size() - 1 : i - 1);
			all &= addTip(segments.get(i).start(), before.endTangent(), segments.get(i).startTangent(), tips);
		}
		return all;
	}

	/** The outside of a region lies a quarter turn from the direction of travel. */
	private boolean addTip(Point corner, Point arriving, Point leaving, List<Geometry> tips) {
		boolean pulledOpen = arriving.cross(leaving) * distance < 0;
		double halfTurn = Math.abs(Math.atan2(arriving.cross(leaving), arriving.dot(leaving))) / 2;
		if (!pulledOpen || flattening.isSmooth(2 * halfTurn)) {
			return true;
		}
		if (1 / Math.cos(halfTurn) > mitreLimit + LIMIT_SLACK) {
			return false;
		}
		Point before = corner.plus(arriving.quarterTurn().times(distance));
		Point after = corner.plus(leaving.quarterTurn().times(distance));
		Point tip = corner.plus(
				arriving.plus(leaving).unit().quarterTurn().times(distance / Math.cos(halfTurn)));
		tips.add(Polygons.factory().createPolygon(new Coordinate[] { coordinate(corner), coordinate(before),
				coordinate(tip), coordinate(after), coordinate(corner) }));
		return true;
	}

	private static Coordinate coordinate(Point point) {
		return new Coordinate(point.x(), point.y());
	}
}
