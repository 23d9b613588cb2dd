package org.frisket.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** A chain of segments, each starting exactly where the one before ends; closed or open. */
public final class Contour {

	/** Null for a moved copy, which makes its segments when somebody asks: of most letters of a text nobody does. */
	private final List<Segment> own;
	private List<Segment> moved;
	/** What a copy was moved from, and how. */
	private final Contour source;
	private final Transform move;
	private final boolean closed;
	/** The contour that this one is a moved copy of; itself none. */
	private final Contour model;
	private final Point offset;
	/** Asked for again and again; made on first use. */
	private Bounds bounds;
	/** 0 as long as it is not known; contours are parts of the keys that results are kept under. */
	private int hash;

	private Contour(List<? extends Segment> segments, boolean closed) {
		own = List.copyOf(segments);
		this.closed = closed;
		source = this;
		move = Transform.IDENTITY;
		model = this;
		offset = Point.ORIGIN;
		for (int i = 1; i < own.size(); i++) {
			requireJoined(own.get(i - 1), own.get(i));
		}
		if (closed && !own.isEmpty()) {
			requireJoined(own.get(own.size() - 1), own.get(0));
		}
	}

	/** A moved copy, which is joined where its source is. */
	private Contour(Contour source, Transform move) {
		own = null;
		this.source = source;
		this.move = move;
		closed = source.closed;
		model = source.model;
		offset = move.apply(source.offset);
	}

	private static void requireJoined(Segment before, Segment after) {
		if (before.end() != after.start() && !before.end().equals(after.start())) {
			throw new IllegalArgumentException("gap in contour between " + before.end() + " and " + after.start());
		}
	}

	/** @throws IllegalArgumentException if two neighbours, or the last and the first, do not meet exactly */
	public static Contour closed(List<? extends Segment> segments) {
		return new Contour(segments, true);
	}

	/** @throws IllegalArgumentException if two neighbours do not meet exactly */
	public static Contour open(List<? extends Segment> segments) {
		return new Contour(segments, false);
	}

	/** A closed polygon through the given corners; the first one is not to be repeated at the end. */
	public static Contour polygon(List<Point> corners) {
		List<Line> lines = new ArrayList<>(corners.size());
		for (int i = 0; i < corners.size(); i++) {
			lines.add(new Line(corners.get(i), corners.get((i + 1) % corners.size())));
		}
		return closed(lines);
	}

	public List<Segment> segments() {
		if (own != null) {
			return own;
		}
		// several threads may make them at once: they make the same
		List<Segment> known = moved;
		if (known == null) {
			known = List.of(source.segmentsBy(move));
			moved = known;
		}
		return known;
	}

	private Segment[] segmentsBy(Transform transform) {
		List<Segment> segments = segments();
		Segment[] mapped = new Segment[segments.size()];
		for (int i = 0; i < mapped.length; i++) {
			mapped[i] = segments.get(i).transformed(transform);
		}
		return mapped;
	}

	public boolean isClosed() {
		return closed;
	}

	public boolean isEmpty() {
		return model.own.isEmpty();
	}

	/** @throws IndexOutOfBoundsException if empty */
	public Point start() {
		return own != null ? own.get(0).start() : move.apply(source.start());
	}

	/** @throws IndexOutOfBoundsException if empty */
	public Point end() {
		return own != null ? own.get(own.size() - 1).end() : move.apply(source.end());
	}

	/**
	 * Enclosed area in mm², negative for a contour that runs counter-clockwise to the viewer (y points down);
	 * stretches that are run around twice count twice. An open contour is taken as closed by a straight line.
	 */
	public double signedArea() {
		double sum = 0;
		for (Segment segment : segments()) {
			sum += segment.areaTerm();
		}
		return closed || isEmpty() ? sum : sum + end().cross(start()) / 2;
	}

	/** Arc length in mm. */
	public double length() {
		return segments().stream().mapToDouble(Segment::length).sum();
	}

	public Bounds bounds() {
		Bounds known = bounds;
		if (known == null) {
			known = model == this ? boundsOfSegments() : model.bounds().moved(offset);
			bounds = known;
		}
		return known;
	}

	private Bounds boundsOfSegments() {
		Bounds sum = Bounds.EMPTY;
		for (Segment segment : segments()) {
			sum = sum.with(segment.bounds());
		}
		return sum;
	}

	/** Number of nodes (segment joints and open ends). */
	public int nodeCount() {
		return closed || isEmpty() ? model.own.size() : model.own.size() + 1;
	}

	public Contour reversed() {
		List<Segment> turned = new ArrayList<>(model.own.size());
		for (Segment segment : segments()) {
			turned.add(segment.reversed());
		}
		Collections.reverse(turned);
		return new Contour(turned, closed);
	}

	public Contour transformed(Transform transform) {
		if (transform.isTranslation() && transform.e() == 0 && transform.f() == 0) {
			return this;
		}
		return transform.isTranslation() ? new Contour(this, transform)
				: new Contour(Arrays.asList(segmentsBy(transform)), closed);
	}

	/**
	 * The contour that this one is a copy of, but for its place; itself if it was not made by moving another. What
	 * holds of a shape wherever it stands can be found out once for all copies of it. Copies have the same model, not
	 * an equal one: contours that are equal by chance are not known to be copies.
	 */
	public Contour model() {
		return model;
	}

	/** By how much this contour was moved away from its {@linkplain #model() model}. */
	public Point offset() {
		return offset;
	}

	/**
	 * The {@linkplain #offset() offset} as seen from a place, freed of what rounding leaves when both are moved: it stays
	 * the same however often contour and place are moved together. It is off by less than a millionth of a µm.
	 */
	public Point offsetFrom(Point place) {
		return offset.minus(place).withoutNoise();
	}

	/**
	 * The corners of a polyline within {@code deviation} of this contour, from the start; for a closed contour the
	 * start is not repeated at the end.
	 */
	public List<Point> flattened(double deviation) {
		List<Point> points = new ArrayList<>();
		if (isEmpty()) {
			return points;
		}
		points.add(start());
		for (Segment segment : segments()) {
			segment.flatten(deviation, t -> points.add(segment.at(t)));
		}
		if (closed) {
			points.remove(points.size() - 1);
		}
		return points;
	}

	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof Contour c && hashCode() == c.hashCode() && closed == c.closed
				&& segments().equals(c.segments());
	}

	@Override
	public int hashCode() {
		int known = hash;
		if (known == 0) {
			known = segments().hashCode() * 2 + (closed ? 1 : 0);
			hash = known;
		}
		return known;
	}

	@Override
	public String toString() {
		return (closed ? "closed " : "open ") + segments();
	}
}
