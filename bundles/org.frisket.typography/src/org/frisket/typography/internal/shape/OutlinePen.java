package org.frisket.typography.internal.shape;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** Draws an outline from the steps of a font program: every contour is closed, segments without extent are left out. */
final class OutlinePen {

	private final List<Contour> contours = new ArrayList<>();
	private final List<Segment> segments = new ArrayList<>();
	private final double scaleX;
	private final double scaleY;
	private Point start = Point.ORIGIN;
	private Point at = Point.ORIGIN;

	/** Coordinates are multiplied by these; a negative {@code scaleY} turns y over. */
	OutlinePen(double scaleX, double scaleY) {
		this.scaleX = scaleX;
		this.scaleY = scaleY;
	}

	private Point point(double x, double y) {
		// adding 0 turns -0 into 0, for points that are equal must be so to the bit
		return new Point(x * scaleX + 0.0, y * scaleY + 0.0);
	}

	void moveTo(double x, double y) {
		close();
		start = at = point(x, y);
	}

	void lineTo(double x, double y) {
		lineTo(point(x, y));
	}

	private void lineTo(Point end) {
		if (!end.equals(at)) {
			segments.add(new Line(at, end));
			at = end;
		}
	}

	void quadraticTo(double cx, double cy, double x, double y) {
		Point control = point(cx, cy);
		Point end = point(x, y);
		if (!control.equals(at) || !end.equals(at)) {
			segments.add(Cubic.ofQuadratic(at, control, end));
			at = end;
		}
	}

	void cubicTo(double cx1, double cy1, double cx2, double cy2, double x, double y) {
		Point control1 = point(cx1, cy1);
		Point control2 = point(cx2, cy2);
		Point end = point(x, y);
		if (!control1.equals(at) || !control2.equals(at) || !end.equals(at)) {
			segments.add(new Cubic(at, control1, control2, end));
			at = end;
		}
	}

	void close() {
		lineTo(start);
		if (!segments.isEmpty()) {
			contours.add(Contour.closed(segments));
			segments.clear();
		}
	}

	Outline outline() {
		close();
		return new Outline(contours);
	}
}
