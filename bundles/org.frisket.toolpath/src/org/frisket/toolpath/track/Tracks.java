package org.frisket.toolpath.track;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** Contours as tracks: curves become arcs in pairs that keep the direction at their ends, or chords. */
public final class Tracks {

	/** How often a curve is halved at most. */
	private static final int MOST_HALVINGS = 24;
	/** Places where two arcs are compared with their curve. */
	private static final int PROBES = 16;
	/** The share of the tolerance that is used up at them: in between it may be a little more. */
	private static final double PROBED = 0.95;
	/** Arcs that are longer than the curve by more are others. */
	private static final double MOST_DETOUR = 1.2;
	/** In mm: shorter moves would be noise. */
	private static final double NOTHING = 1e-9;
	/** An arc wider than a half is one on the wrong side. */
	private static final double WIDEST = Math.PI;

	private final double tolerance;
	private final List<Move> moves = new ArrayList<>();

	private Tracks(double tolerance) {
		this.tolerance = tolerance;
	}

	/**
	 * With curves as arcs.
	 *
	 * @param tolerance in mm, positive: how far an arc may be from its curve
	 */
	public static Track arcs(Contour contour, double tolerance) {
		Tracks tracks = new Tracks(tolerance);
		for (Segment segment : contour.segments()) {
			if (segment instanceof Cubic cubic) {
				tracks.curve(cubic, 0);
			} else {
				tracks.straight(segment.start(), segment.end());
			}
		}
		return new Track(tracks.moves, contour.isClosed());
	}

	/**
	 * With curves as chords.
	 *
	 * @param tolerance in mm, positive: how far a chord may be from its curve
	 */
	public static Track chords(Contour contour, double tolerance) {
		Tracks tracks = new Tracks(tolerance);
		List<Point> points = contour.flattened(tolerance);
		for (int i = 1; i < points.size(); i++) {
			tracks.straight(points.get(i - 1), points.get(i));
		}
		if (contour.isClosed()) {
			tracks.straight(points.get(points.size() - 1), points.get(0));
		}
		return new Track(tracks.moves, contour.isClosed());
	}

	private void straight(Point from, Point to) {
		if (Math.hypot(to.x() - from.x(), to.y() - from.y()) > NOTHING) {
			moves.add(new Straight(from, to));
		}
	}

	private void curve(Cubic cubic, int halvings) {
		if (isNothing(cubic)) {
			// no arcs would ever fit it, and there is nothing to follow
			return;
		}
		List<Move> pair = Biarc.between(cubic.start(), cubic.startTangent(), cubic.end(), cubic.endTangent());
		if (halvings >= MOST_HALVINGS || fits(cubic, pair)) {
			pair.stream().filter(move -> move.length() > NOTHING).forEach(moves::add);
			return;
		}
		curve((Cubic) cubic.between(0, 0.5), halvings + 1);
		curve((Cubic) cubic.between(0.5, 1), halvings + 1);
	}

	private static boolean isNothing(Cubic cubic) {
		return far(cubic.start(), cubic.control1()) <= NOTHING && far(cubic.start(), cubic.control2()) <= NOTHING
				&& far(cubic.start(), cubic.end()) <= NOTHING;
	}

	private boolean fits(Cubic cubic, List<Move> pair) {
		for (Move move : pair) {
			if (move instanceof Arc arc && Math.abs(arc.sweep()) > WIDEST) {
				return false;
			}
		}
		List<Nearness> near = pair.stream().map(Nearness::of).toList();
		double way = 0;
		Point last = cubic.start();
		for (int i = 1; i <= PROBES; i++) {
			Point probe = cubic.at((double) i / PROBES);
			double least = Double.POSITIVE_INFINITY;
			for (Nearness each : near) {
				least = Math.min(least, each.distance(probe));
			}
			if (least > PROBED * tolerance) {
				return false;
			}
			way += far(last, probe);
			last = probe;
		}
		// one that runs back on itself, or arcs that do not
		double length = pair.stream().mapToDouble(Move::length).sum();
		return way <= 2 * length && length <= MOST_DETOUR * way + 2 * tolerance;
	}

	private static double far(Point a, Point b) {
		return Math.hypot(a.x() - b.x(), a.y() - b.y());
	}
}
