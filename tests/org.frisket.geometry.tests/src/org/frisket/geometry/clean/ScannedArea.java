package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;

/** Area of what a fill rule marks, by adding up horizontal lines: slow, plain, and nothing like the tested code. */
final class ScannedArea {

	private static final int LINES = 600;
	private static final double DEVIATION = 1e-3;

	private ScannedArea() {
	}

	private record Crossing(double x, int winding) {
	}

	static double of(Outline outline, FillRule rule) {
		Bounds bounds = outline.bounds();
		double step = bounds.height() / LINES;
		List<List<Crossing>> lines = new ArrayList<>();
		for (int i = 0; i < LINES; i++) {
			lines.add(new ArrayList<>());
		}
		for (Contour contour : outline.contours()) {
			List<Point> corners = contour.flattened(DEVIATION);
			for (int i = 0; i < corners.size(); i++) {
				cross(corners.get(i), corners.get((i + 1) % corners.size()), bounds.minY(), step, lines);
			}
		}
		return step * lines.stream().mapToDouble(l -> inside(l, rule)).sum();
	}

	private static void cross(Point from, Point to, double top, double step, List<List<Crossing>> lines) {
		double low = Math.min(from.y(), to.y());
		double high = Math.max(from.y(), to.y());
		for (int i = Math.max(0, (int) ((low - top) / step) - 1); i < LINES; i++) {
			double y = top + (i + 0.5) * step;
			if (y >= high) {
				return;
			}
			if (y >= low) {
				double x = from.x() + (to.x() - from.x()) * (y - from.y()) / (to.y() - from.y());
				lines.get(i).add(new Crossing(x, to.y() > from.y() ? 1 : -1));
			}
		}
	}

	private static double inside(List<Crossing> line, FillRule rule) {
		line.sort(Comparator.comparingDouble(Crossing::x));
		double sum = 0;
		double before = 0;
		int winding = 0;
		for (Crossing crossing : line) {
			if (rule == FillRule.NON_ZERO ? winding != 0 : winding % 2 != 0) {
				sum += crossing.x() - before;
			}
			before = crossing.x();
			winding += crossing.winding();
		}
		return sum;
	}
}
