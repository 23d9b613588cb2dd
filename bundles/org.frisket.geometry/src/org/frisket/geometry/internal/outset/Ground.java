package org.frisket.geometry.internal.outset;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** The edges and convex corners of a piece as feet of rims, all round each contour. */
final class Ground {

	/** Turns in radians that are none: at 100 mm the gap is a µm. */
	private static final double SMOOTH = 1e-5;
	/** A turn that may be one to either side. */
	private static final double STRAIGHT_BACK = Math.PI - 1e-6;
	/** No rim turns further than this in radians, so that none can cross itself. */
	private static final double WIDEST = 2.6;
	private static final int HALVINGS = 6;

	private final List<Loop> loops = new ArrayList<>();
	final Sources sources;

	/** @param inwards whether rims are to lie inside the piece */
	Ground(Piece piece, boolean inwards) throws Unclear {
		for (Contour contour : piece.contours()) {
			loops.add(loop((inwards ? contour.reversed() : contour).segments()));
		}
		sources = new Sources(piece);
	}

	/** Rims at a distance above 0, before anything is taken away. */
	List<Loop> at(double distance) {
		return loops.stream().map(loop -> loop.moved(distance)).toList();
	}

	private static Loop loop(List<Segment> segments) throws Unclear {
		List<Rim> rims = new ArrayList<>();
		List<Joint> joints = new ArrayList<>();
		for (int i = 0; i < segments.size(); i++) {
			Segment segment = segments.get(i);
			Segment next = segments.get(i + 1 < segments.size() ? i + 1 : 0);
			addSegment(segment, rims, joints);
			addCorner(segment.endTangent(), next.start(), next.startTangent(), rims, joints);
		}
		return new Loop(rims, joints);
	}

	private static void addSegment(Segment segment, List<Rim> rims, List<Joint> joints) {
		if (segment instanceof Cubic cubic) {
			addCubic(new CubicFoot(cubic), cubic, 0, 1, HALVINGS, rims, joints);
		} else {
			rims.add(new Rim(new LineFoot((Line) segment), 0, 1, 0));
		}
	}

	private static void addCubic(CubicFoot foot, Cubic cubic, double from, double to, int halvings, List<Rim> rims,
			List<Joint> joints) {
		if (halvings > 0 && turn(cubic.between(from, to)) > WIDEST) {
			double middle = (from + to) / 2;
			addCubic(foot, cubic, from, middle, halvings - 1, rims, joints);
			joints.add(Joint.SMOOTH);
			addCubic(foot, cubic, middle, to, halvings - 1, rims, joints);
		} else {
			rims.add(new Rim(foot, from, to, 0));
		}
	}

	/** No less than all turns of the cubic, to whichever side. */
	private static double turn(Cubic cubic) {
		Point first = cubic.control1().minus(cubic.start());
		Point second = cubic.control2().minus(cubic.control1());
		Point third = cubic.end().minus(cubic.control2());
		return Math.abs(turn(first, second)) + Math.abs(turn(second, third));
	}

	private static double turn(Point arriving, Point leaving) {
		return Math.atan2(arriving.cross(leaving), arriving.dot(leaving));
	}

	private static void addCorner(Point arriving, Point corner, Point leaving, List<Rim> rims, List<Joint> joints)
			throws Unclear {
		double turn = turn(arriving, leaving);
		if (Math.abs(turn) <= SMOOTH) {
			joints.add(Joint.SMOOTH);
		} else if (Math.abs(turn) > STRAIGHT_BACK) {
			throw new Unclear();
		} else if (turn > 0) {
			joints.add(Joint.OPEN);
		} else {
			Point outwards = arriving.quarterTurn();
			double start = -Math.atan2(outwards.y(), outwards.x());
			joints.add(Joint.SMOOTH);
			rims.add(new Rim(new CornerFoot(corner), start, start - turn, 0));
			joints.add(Joint.SMOOTH);
		}
	}
}
