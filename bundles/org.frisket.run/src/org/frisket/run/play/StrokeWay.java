package org.frisket.run.play;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Move;

/** The way of a tool's tip in straight stretches, for painting and pointing. */
public final class StrokeWay {

	/** Nobody sees more on a screen that shows a sheet. */
	private static final double DEVIATION_MM = 0.05;

	private final double[] xs;
	private final double[] ys;
	/** From the start to each corner, in mm. */
	private final double[] ways;
	private final Bounds bounds;

	private StrokeWay(List<Point> corners) {
		int count = corners.size();
		xs = new double[count];
		ys = new double[count];
		ways = new double[count];
		double left = Double.POSITIVE_INFINITY;
		double top = Double.POSITIVE_INFINITY;
		double right = Double.NEGATIVE_INFINITY;
		double bottom = Double.NEGATIVE_INFINITY;
		for (int i = 0; i < count; i++) {
			xs[i] = corners.get(i).x();
			ys[i] = corners.get(i).y();
			ways[i] = i == 0 ? 0 : ways[i - 1] + Math.hypot(xs[i] - xs[i - 1], ys[i] - ys[i - 1]);
			left = Math.min(left, xs[i]);
			top = Math.min(top, ys[i]);
			right = Math.max(right, xs[i]);
			bottom = Math.max(bottom, ys[i]);
		}
		bounds = new Bounds(left, top, right, bottom);
	}

	/** @param moves one at least */
	public static StrokeWay of(List<Move> moves) {
		List<Point> corners = new ArrayList<>();
		corners.add(moves.get(0).start());
		for (Move move : moves) {
			int pieces = pieces(move);
			for (int i = 1; i < pieces; i++) {
				corners.add(move.at(move.length() * i / pieces));
			}
			corners.add(move.end());
		}
		return new StrokeWay(corners);
	}

	/** The chord of a piece is off the arc by r (1 − cos(angle / 2)). */
	private static int pieces(Move move) {
		if (!(move instanceof Arc arc)) {
			return 1;
		}
		double widest = arc.radius() <= DEVIATION_MM ? Math.PI / 2 : 2 * Math.acos(1 - DEVIATION_MM / arc.radius());
		return Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / widest));
	}

	public Bounds bounds() {
		return bounds;
	}

	/** How many corners there are, both ends included. */
	public int size() {
		return xs.length;
	}

	/** Of a corner, in mm. */
	public double x(int corner) {
		return xs[corner];
	}

	/** Of a corner, in mm. */
	public double y(int corner) {
		return ys[corner];
	}

	/** Where one is after a share of the way, from 0 to 1. */
	public Point at(double share) {
		double way = Math.max(0, Math.min(1, share)) * ways[ways.length - 1];
		int found = Arrays.binarySearch(ways, way);
		if (found >= 0) {
			return new Point(xs[found], ys[found]);
		}
		int next = Math.min(-found - 1, xs.length - 1);
		double part = (way - ways[next - 1]) / (ways[next] - ways[next - 1]);
		return new Point(xs[next - 1] + part * (xs[next] - xs[next - 1]), ys[next - 1] + part * (ys[next] - ys[next - 1]));
	}

	/** How many corners lie on a share of the way, from 0 to 1; one at least. */
	public int cornersUpTo(double share) {
		double way = Math.max(0, Math.min(1, share)) * ways[ways.length - 1];
		int found = 0;
		while (found < ways.length && ways[found] <= way) {
			found++;
		}
		return Math.max(1, found);
	}

	/** How far a place is from the way, in mm. */
	public double distance(Point place) {
		double nearest = Math.hypot(place.x() - xs[0], place.y() - ys[0]);
		for (int i = 1; i < xs.length; i++) {
			double dx = xs[i] - xs[i - 1];
			double dy = ys[i] - ys[i - 1];
			double square = dx * dx + dy * dy;
			double part = square == 0 ? 0
					: Math.max(0, Math.min(1, ((place.x() - xs[i - 1]) * dx + (place.y() - ys[i - 1]) * dy) / square));
			nearest = Math.min(nearest,
					Math.hypot(place.x() - xs[i - 1] - part * dx, place.y() - ys[i - 1] - part * dy));
		}
		return nearest;
	}
}
