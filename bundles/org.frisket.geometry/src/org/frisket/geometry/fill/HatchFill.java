package org.frisket.geometry.fill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;

/**
 * Parallel lines over an area, on one lattice for the whole plane, so that neighbouring areas hatched alike go together.
 * Every other line runs back, as a pen would draw them.
 *
 * @param spacing distance of the lines in mm
 * @param angle   in radians, from the x axis towards the y axis, which points down
 * @param inset   how far the lines stay off the edge, in mm; not below 0
 */
public record HatchFill(double spacing, double angle, double inset) {

	/** Off the lattice by an odd fraction of the spacing, so that no corner with round coordinates is met exactly. */
	private static final double SHIFT = 1.0 / 1009;

	/** @throws IllegalArgumentException if a value is out of range */
	public HatchFill {
		if (!(spacing > 0) || !Double.isFinite(spacing) || !Double.isFinite(angle) || !(inset >= 0)
				|| !Double.isFinite(inset)) {
			throw new IllegalArgumentException(
					"hatching needs a positive spacing and an inset of 0 or more, got " + spacing + " and " + inset);
		}
	}

	/**
	 * The lines inside a region, right to within the tolerance, in the order of the lattice.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public List<Contour> of(Region region, Tolerance tolerance, Monitor monitor) {
		Region area = inset == 0 ? region
				: Offset.of(region, -inset, Corners.ROUND, Holes.KEEP, tolerance.share(0.5), monitor);
		Transform level = new Transform(Math.cos(angle), -Math.sin(angle), Math.sin(angle), Math.cos(angle), 0, 0);
		Transform back = level.inverse();
		List<List<Point>> rings = new ArrayList<>();
		for (Contour contour : area.contours()) {
			rings.add(contour.transformed(level).flattened(tolerance.mm() / 2));
		}
		double[] levels = rings.stream().flatMap(List::stream).mapToDouble(Point::y).sorted().toArray();
		List<Contour> lines = new ArrayList<>();
		if (levels.length == 0) {
			return lines;
		}
		Scan scan = new Scan(rings);
		for (long k = (long) Math.ceil(levels[0] / spacing); k * spacing <= levels[levels.length - 1]; k++) {
			monitor.check();
			double y = (k + SHIFT) * spacing;
			double[] stops = scan.crossings(y);
			for (int i = 0; i + 1 < stops.length; i += 2) {
				Line line = new Line(back.apply(new Point(stops[i], y)), back.apply(new Point(stops[i + 1], y)));
				lines.add(Contour.open(List.of(k % 2 == 0 ? line : line.reversed())));
			}
		}
		return lines;
	}

	/** The edges of rings by their upper ends, for levels asked for from the top down. */
	private static final class Scan {

		private final List<Point[]> waiting = new ArrayList<>();
		private final List<Point[]> met = new ArrayList<>();
		private int next;

		Scan(List<List<Point>> rings) {
			for (List<Point> ring : rings) {
				for (int i = 0; i < ring.size(); i++) {
					Point a = ring.get(i);
					Point b = ring.get((i + 1) % ring.size());
					if (a.y() != b.y()) {
						waiting.add(a.y() < b.y() ? new Point[] { a, b } : new Point[] { b, a });
					}
				}
			}
			waiting.sort((a, b) -> Double.compare(a[0].y(), b[0].y()));
		}

		double[] crossings(double y) {
			while (next < waiting.size() && waiting.get(next)[0].y() <= y) {
				met.add(waiting.get(next++));
			}
			met.removeIf(edge -> edge[1].y() <= y);
			double[] found = new double[met.size()];
			for (int i = 0; i < found.length; i++) {
				Point a = met.get(i)[0];
				Point b = met.get(i)[1];
				found[i] = a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
			}
			Arrays.sort(found);
			return found;
		}
	}
}
