package org.frisket.ui.bench.internal.picture;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/**
 * What of an outline matters for painting a part of it. Filling and stroking take time for each curve of a path, even
 * for those that are clipped away afterwards.
 */
public final class SeenPart {

	private static final int LEFT = 1;
	private static final int RIGHT = 2;
	private static final int ABOVE = 4;
	private static final int BELOW = 8;

	private SeenPart() {
	}

	/** The contours that may be seen in a window, whole. */
	public static Outline wholeContours(Outline outline, Bounds window) {
		return new Outline(
				outline.contours().stream().filter(contour -> contour.bounds().intersects(window)).toList());
	}

	/**
	 * An outline that has the same curves in a window, and the same places inside. Where it leaves the window and comes
	 * back on the same side, it goes straight: that chord stays beyond the same side.
	 *
	 * @param window in the outline's frame, with room for the width of lines
	 */
	public static Outline of(Outline outline, Bounds window) {
		List<Contour> seen = new ArrayList<>();
		for (Contour contour : outline.contours()) {
			if (contour.bounds().intersects(window)) {
				List<Segment> segments = segments(contour.segments(), window);
				if (!segments.isEmpty()) {
					seen.add(contour.isClosed() ? Contour.closed(segments) : Contour.open(segments));
				}
			}
		}
		return new Outline(seen);
	}

	/** Empty if all of it lies beyond one side. */
	private static List<Segment> segments(List<Segment> all, Bounds window) {
		List<Segment> seen = new ArrayList<>();
		int common = 0;
		Segment first = null;
		Segment last = null;
		for (Segment segment : all) {
			int sides = sides(segment, window);
			if ((common & sides) != 0) {
				common &= sides;
				last = segment;
				continue;
			}
			add(first, last, seen);
			common = sides;
			first = segment;
			last = segment;
		}
		if (common == 0 || !seen.isEmpty()) {
			add(first, last, seen);
		}
		return seen;
	}

	private static void add(Segment first, Segment last, List<Segment> seen) {
		if (first != null) {
			seen.add(first == last ? first : new Line(first.start(), last.end()));
		}
	}

	/** The sides of the window that all of a segment lies beyond, by its control points. */
	private static int sides(Segment segment, Bounds window) {
		int sides = sides(segment.start(), window) & sides(segment.end(), window);
		return sides != 0 && segment instanceof Cubic cubic
				? sides & sides(cubic.control1(), window) & sides(cubic.control2(), window)
				: sides;
	}

	private static int sides(Point point, Bounds window) {
		return (point.x() < window.minX() ? LEFT : 0) | (point.x() > window.maxX() ? RIGHT : 0)
				| (point.y() < window.minY() ? ABOVE : 0) | (point.y() > window.maxY() ? BELOW : 0);
	}
}
