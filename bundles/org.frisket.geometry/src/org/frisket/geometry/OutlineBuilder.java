package org.frisket.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Builds an outline by pen moves, as path data, fonts and graphics libraries describe shapes. Segments without extent
 * are left out.
 */
public final class OutlineBuilder {

	/** Relative to the size of the coordinates; what adding up relative steps may miss the start by. */
	private static final double ROUNDING = 1e-12;

	/** The width and height of a contour and its start's coordinates are at most so many times its largest coordinate. */
	private static final double REACH = 7;

	/** A quarter of what outlines are commonly cleaned within. */
	private static final double ARC_DEVIATION = 0.005;

	private final double arcDeviation;
	private final List<Contour> contours = new ArrayList<>();
	private final List<Point> dots = new ArrayList<>();
	private List<Segment> segments = new ArrayList<>();
	private Point start = Point.ORIGIN;
	private Point current = Point.ORIGIN;
	/** No coordinate so far is further from zero. */
	private double largest;
	/** Whether the pen was put down since the last end. */
	private boolean down;
	/** Whether anything was drawn since then, be it without extent. */
	private boolean drawn;
	/** Last control point of a cubic or quadratic just drawn, for the smooth forms; null after anything else. */
	private Point cubicControl;
	private Point quadraticControl;

	/** Arcs come within 0.005 mm. */
	public OutlineBuilder() {
		this(ARC_DEVIATION);
	}

	/** @param arcDeviation how far the cubics of an arc may lie from it, in the unit of the coordinates; positive */
	public OutlineBuilder(double arcDeviation) {
		this.arcDeviation = arcDeviation;
	}

	/** Where the pen is. */
	public Point current() {
		return current;
	}

	/** Ends the contour before, which stays open, and starts a new one. */
	public void moveTo(Point point) {
		finish(false);
		start = point;
		arriveAt(point);
		down = true;
		drawn = false;
	}

	public void lineTo(Point end) {
		if (!end.equals(current)) {
			segments.add(new Line(current, end));
		}
		arriveAt(end);
	}

	public void cubicTo(Point control1, Point control2, Point end) {
		if (!(control1.equals(current) && control2.equals(current) && end.equals(current))) {
			segments.add(new Cubic(current, control1, control2, end));
		}
		arriveAt(end);
		reachTo(control1);
		reachTo(control2);
		cubicControl = control2;
	}

	/** A cubic whose first control point mirrors the last one of the cubic before. */
	public void smoothCubicTo(Point control2, Point end) {
		cubicTo(mirrored(cubicControl), control2, end);
	}

	public void quadraticTo(Point control, Point end) {
		if (!(control.equals(current) && end.equals(current))) {
			segments.add(Cubic.ofQuadratic(current, control, end));
		}
		arriveAt(end);
		reachTo(control);
		quadraticControl = control;
	}

	/** A quadratic whose control point mirrors that of the quadratic before. */
	public void smoothQuadraticTo(Point end) {
		quadraticTo(mirrored(quadraticControl), end);
	}

	private Point mirrored(Point control) {
		return control == null ? current : current.times(2).minus(control);
	}

	/**
	 * An elliptical arc as SVG's path data describes it, by its end.
	 *
	 * @param turn  of the ellipse's x axis, in radians towards the y axis
	 * @param large whether the longer way round is meant
	 * @param sweep whether angles grow on the way, from the x axis towards the y axis
	 */
	public void arcTo(double rx, double ry, double turn, boolean large, boolean sweep, Point end) {
		EllipticalArc.add(this, rx, ry, turn, large, sweep, end, arcDeviation);
		drawn = true;
	}

	/**
	 * An elliptical arc round a centre. A line leads to its start unless the pen is there.
	 *
	 * @param turn  of the ellipse's x axis, in radians towards the y axis
	 * @param from  where it starts, in radians on the circle that the ellipse is stretched from
	 * @param sweep how far it goes; negative for the other way
	 */
	public void arcAround(Point centre, double rx, double ry, double turn, double from, double sweep) {
		lineTo(EllipticalArc.pointAround(centre, rx, ry, turn, from));
		EllipticalArc.addAround(this, centre, rx, ry, turn, from, sweep, arcDeviation);
	}

	/** Starts a new contour with an arc; see {@link #arcAround}. */
	public void startArc(Point centre, double rx, double ry, double turn, double from, double sweep) {
		moveTo(EllipticalArc.pointAround(centre, rx, ry, turn, from));
		arcAround(centre, rx, ry, turn, from, sweep);
	}

	/** Closes the contour, by a line unless the pen is at its start; the pen goes back there. */
	public void close() {
		if (!segments.isEmpty() && !current.equals(start)) {
			int last = segments.size() - 1;
			if (isBackAtStart()) {
				segments.set(last, segments.get(last).withEnds(segments.get(last).start(), start));
			} else {
				segments.add(new Line(current, start));
			}
		}
		drawn |= down;
		finish(true);
		arriveAt(start);
		down = false;
		drawn = false;
	}

	private boolean isBackAtStart() {
		double missed = current.distance(start);
		// the reach of curves takes time, and hardly any contour needs it
		return missed <= ROUNDING * REACH * largest
				&& missed <= ROUNDING * (Math.abs(start.x()) + Math.abs(start.y()) + contoursReach());
	}

	private double contoursReach() {
		Bounds bounds = segments.stream().map(Segment::bounds).reduce(Bounds.EMPTY, Bounds::with);
		return bounds.width() + bounds.height();
	}

	/** All contours so far; one that is not closed is open. */
	public Outline build() {
		finish(false);
		return new Outline(contours);
	}

	/**
	 * Where the pen was put down and lifted again without a way between: a segment without extent, or an end where
	 * nothing had begun. They are no contours.
	 */
	public List<Point> dots() {
		finish(false);
		return List.copyOf(dots);
	}

	private void finish(boolean closed) {
		if (!segments.isEmpty()) {
			contours.add(closed ? Contour.closed(segments) : Contour.open(segments));
			segments = new ArrayList<>();
		} else if (drawn) {
			dots.add(current);
		}
		drawn = false;
	}

	private void reachTo(Point point) {
		largest = Math.max(largest, Math.max(Math.abs(point.x()), Math.abs(point.y())));
	}

	private void arriveAt(Point point) {
		current = point;
		drawn = true;
		reachTo(point);
		cubicControl = null;
		quadraticControl = null;
	}
}
