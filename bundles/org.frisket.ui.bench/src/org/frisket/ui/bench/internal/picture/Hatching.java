package org.frisket.ui.bench.internal.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;

/** Slanting lines that fill an area, one even distance apart and on one lattice for the whole bench. */
public final class Hatching {

	private static final double HALF_SQRT2 = Math.sqrt(0.5);

	private Hatching() {
	}

	/** The parts inside the closed curves of lines that rise at 45° and lie {@code spacing} mm apart. */
	public static Outline of(FlatCurves area, double spacing) {
		if (area.bounds().isEmpty()) {
			return Outline.EMPTY;
		}
		// turned axes: u along the lines, v across them
		double first = (area.bounds().minX() + area.bounds().minY()) * HALF_SQRT2;
		double last = (area.bounds().maxX() + area.bounds().maxY()) * HALF_SQRT2;
		List<Contour> lines = new ArrayList<>();
		for (long k = (long) Math.ceil(first / spacing); k * spacing <= last; k++) {
			// off the lattice by an odd fraction, so that no corner with round coordinates is met exactly
			addLine(area, k * spacing + spacing / 1009, lines);
		}
		return new Outline(lines);
	}

	private static void addLine(FlatCurves area, double v, List<Contour> lines) {
		double[] stops = crossings(area, v);
		for (int i = 0; i + 1 < stops.length; i += 2) {
			lines.add(Contour.open(List.of(new Line(point(stops[i], v), point(stops[i + 1], v)))));
		}
	}

	private static double[] crossings(FlatCurves area, double v) {
		double[] found = new double[8];
		int count = 0;
		for (double[] ring : area.rings()) {
			for (int i = 0; i + 3 < ring.length; i += 2) {
				double v0 = (ring[i] + ring[i + 1]) * HALF_SQRT2;
				double v1 = (ring[i + 2] + ring[i + 3]) * HALF_SQRT2;
				if (v0 > v != v1 > v) {
					double u0 = (ring[i] - ring[i + 1]) * HALF_SQRT2;
					double u1 = (ring[i + 2] - ring[i + 3]) * HALF_SQRT2;
					if (count == found.length) {
						found = Arrays.copyOf(found, count * 2);
					}
					found[count++] = u0 + (v - v0) * (u1 - u0) / (v1 - v0);
				}
			}
		}
		found = Arrays.copyOf(found, count);
		Arrays.sort(found);
		return found;
	}

	private static Point point(double u, double v) {
		return new Point((v + u) * HALF_SQRT2, (v - u) * HALF_SQRT2);
	}
}
