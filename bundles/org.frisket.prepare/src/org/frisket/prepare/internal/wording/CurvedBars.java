package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.typography.SetText;
import org.frisket.typography.TextLine;

/** Bars of straight lines brought to the curve that the lines run along, at the same distance from it everywhere. */
final class CurvedBars {

	private static final double STEP = 1;
	private static final int FEWEST = 8;
	private static final int MOST = 4_000;
	/** A sharper turn between two steps is a corner of the path. */
	private static final double CORNER = Math.toRadians(40);

	private CurvedBars() {
	}

	/** @param bars upright rectangles, one for each line that has one, in the order of the lines */
	static Outline of(Outline bars, SetText straight, TextCurve curve) {
		List<Contour> bent = new ArrayList<>();
		for (Contour bar : bars.contours()) {
			Bounds box = bar.bounds();
			int line = nearestLine(straight.lines(), box);
			List<Segment> upper = edge(box.minX(), box.maxX(), box.minY(), line, straight, curve);
			List<Segment> lower = edge(box.minX(), box.maxX(), box.maxY(), line, straight, curve);
			List<Segment> around = new ArrayList<>(lower);
			around.add(new Line(lower.get(lower.size() - 1).end(), upper.get(upper.size() - 1).end()));
			for (int i = upper.size() - 1; i >= 0; i--) {
				around.add(upper.get(i) instanceof Cubic cubic ? cubic.reversed() : ((Line) upper.get(i)).reversed());
			}
			around.add(new Line(upper.get(0).start(), lower.get(0).start()));
			bent.add(Contour.closed(around));
		}
		return new Outline(bent);
	}

	/** Bars keep the order and the distance of their lines. */
	private static int nearestLine(List<TextLine> lines, Bounds bar) {
		int nearest = 0;
		for (int i = 1; i < lines.size(); i++) {
			double y = bar.centre().y();
			nearest = Math.abs(lines.get(i).baseline() - y) < Math.abs(lines.get(nearest).baseline() - y) ? i : nearest;
		}
		return nearest;
	}

	private static List<Segment> edge(double from, double to, double y, int line, SetText text, TextCurve curve) {
		int steps = (int) Math.max(FEWEST, Math.min(MOST, Math.ceil((to - from) / STEP)));
		List<Point> at = new ArrayList<>();
		for (int i = 0; i <= steps; i++) {
			at.add(new Point(from + (to - from) * i / steps, y));
		}
		List<Point> places = curve.bend(text, at, line);
		List<Point> below = curve.bend(text, at.stream().map(p -> p.plus(new Point(0, 1))).toList(), line);
		List<Segment> segments = new ArrayList<>();
		for (int i = 0; i < steps; i++) {
			segments.add(piece(places.get(i), direction(places.get(i), below.get(i)), places.get(i + 1),
					direction(places.get(i + 1), below.get(i + 1))));
		}
		return segments;
	}

	/** Along the line, where down is known. */
	private static Point direction(Point place, Point below) {
		Point down = below.minus(place).unit();
		return new Point(down.y(), -down.x());
	}

	/** A curve with these directions at its ends; for equal turns it is the usual one for an arc of a circle. */
	private static Segment piece(Point start, Point startAlong, Point end, Point endAlong) {
		double turn = Math.acos(Math.max(-1, Math.min(1, startAlong.dot(endAlong))));
		Point chord = end.minus(start);
		boolean runsOn = chord.dot(startAlong) > 0 && chord.dot(endAlong) > 0;
		if (turn > CORNER || !runsOn) {
			return new Line(start, end);
		}
		double cos = Math.cos(turn / 4);
		double handle = chord.length() / (3 * cos * cos);
		return new Cubic(start, start.plus(startAlong.times(handle)), end.minus(endAlong.times(handle)), end);
	}
}
