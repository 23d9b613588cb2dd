package org.frisket.geometry.form;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;

/**
 * What a region passes over while it is moved straight on: its Minkowski sum with a straight line, as a block shadow is.
 * <p>
 * Edges that face the way it moves are found at its end, all others at its beginning, and straight lines in that
 * direction join them. This is the convolution of the contour with the line (Guibas, Ramshaw, Stolfi 1983): it winds
 * round a place once for every stretch in which the line, turned round and put there, meets the region. So its non-zero
 * windings are the sum, and every curve of it is one of the region's own.
 */
public final class Sweep {

	private final Point way;

	private Sweep(Point way) {
		this.way = way;
	}

	/**
	 * @param way from beginning to end, in mm
	 * @throws IllegalArgumentException if the way is not finite
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Region of(Region region, Point way, Tolerance tolerance, Monitor monitor) {
		if (!way.isFinite()) {
			throw new IllegalArgumentException("a sweep by " + way);
		}
		if (region.isEmpty() || way.length() == 0) {
			return region;
		}
		Sweep sweep = new Sweep(way);
		Outline swept = new Outline(region.contours().stream().map(sweep::convolved).toList());
		return new OutlineCleaner().clean(swept, FillRule.NON_ZERO, tolerance, monitor).region();
	}

	private Contour convolved(Contour contour) {
		List<Segment> parts = new ArrayList<>();
		contour.segments().forEach(segment -> cut(segment, parts));
		Transform there = Transform.translation(way.x(), way.y());
		List<Segment> moved = new ArrayList<>();
		boolean[] faces = new boolean[parts.size()];
		boolean facing = false;
		// edges along the way are taken with those before them; twice round, for those before the first
		for (int i = 0; i < 2 * faces.length; i++) {
			Segment part = parts.get(i % faces.length);
			double side = part.derivative(0.5).cross(way);
			facing = side == 0 ? facing : side > 0;
			faces[i % faces.length] = facing;
		}
		for (int i = 0; i < faces.length; i++) {
			Segment part = parts.get(i);
			moved.add(faces[i] ? part.transformed(there) : part);
			int next = (i + 1) % faces.length;
			if (faces[i] != faces[next]) {
				Point start = moved.get(moved.size() - 1).end();
				Point end = parts.get(next).start();
				moved.add(new Line(start, faces[next] ? there.apply(end) : end));
			}
		}
		return Contour.closed(moved);
	}

	/** Where a curve runs along the way it is cut, so that each part faces one way. */
	private void cut(Segment segment, List<Segment> parts) {
		double before = 0;
		Point start = segment.start();
		if (segment instanceof Cubic cubic) {
			for (double t : alongWay(cubic)) {
				Segment part = cubic.between(before, t);
				parts.add(part.withEnds(start, part.end()));
				before = t;
				start = part.end();
			}
		}
		parts.add(before == 0 ? segment : segment.between(before, 1).withEnds(start, segment.end()));
	}

	/** Parameters inside (0, 1), in order. */
	private double[] alongWay(Cubic cubic) {
		double p0 = cubic.start().cross(way);
		double p1 = cubic.control1().cross(way);
		double p2 = cubic.control2().cross(way);
		double p3 = cubic.end().cross(way);
		double a = p3 - 3 * p2 + 3 * p1 - p0;
		double b = 2 * (p2 - 2 * p1 + p0);
		double c = p1 - p0;
		double discriminant = b * b - 4 * a * c;
		if (!(discriminant > 0)) {
			return new double[0];
		}
		double q = -(b + Math.copySign(Math.sqrt(discriminant), b)) / 2;
		return java.util.Arrays.stream(new double[] { q / a, c / q }).filter(t -> t > 0 && t < 1).sorted().toArray();
	}
}
