package org.frisket.benchmarks;

import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.Supplier;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.RepairCourse;
import org.frisket.prepare.repair.RepairSteps;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/**
 * The whole course of repair, curves in and curves out, against bare unions of the same shapes, as they grow. How it
 * grows is told by what it takes for each n log n of the segments, against the smallest size. All times are those of the processor.
 */
final class CleanBenchmark {

	private static final Tolerance TOLERANCE = Tolerance.DEFAULT;
	private static final int[] SIZES = { 1_000, 10_000, 30_000, 100_000 };
	/** The union of AWT grows with the square. */
	private static final int MOST_FOR_AWT = 10_000;

	private CleanBenchmark() {
	}

	static void run() throws Exception {
		RepairCourse course = RepairSteps.course(Map.of());
		Map<String, IntFunction<List<Contour>>> drawings = new LinkedHashMap<>();
		drawings.put("crowd in rows", Flattened::crowd);
		drawings.put("scattered chains", Flattened::chains);
		for (Map.Entry<String, IntFunction<List<Contour>>> drawing : drawings.entrySet()) {
			double[] smallest = null;
			for (int size : SIZES) {
				List<Contour> contours = drawing.getValue().apply(size);
				double[] ms = run(course, drawing.getKey(), contours);
				double order = order(Flattened.segments(contours));
				double[] each = { ms[0] / order, Math.min(ms[2], ms[3]) / order };
				smallest = smallest == null ? each : smallest;
				System.out.printf("  for each n log n: %.2f times what %d segments take; JTS %.2f times%n", each[0] / smallest[0],
						SIZES[0], each[1] / smallest[1]);
			}
		}
	}

	private static double order(int segments) {
		return segments * Math.log(segments);
	}

	/** Times of the processor in ms: of the course, of the union alone, and of the peers. */
	private static double[] run(RepairCourse course, String name, List<Contour> contours) {
		Outline outline = new Outline(contours);
		Artwork artwork = new Artwork(List.of(new Artwork.Area(outline, FillRule.NON_ZERO)), List.of());
		List<Geometry> polygons = Flattened.polygons(contours, TOLERANCE.mm() / 2);
		List<Supplier<?>> rivals = new ArrayList<>(List.of( //
				() -> course.run(artwork, TOLERANCE, Monitor.NONE),
				() -> new OutlineCleaner().clean(outline, FillRule.NON_ZERO, TOLERANCE, Monitor.NONE),
				() -> OverlayNGRobust.union(polygons), () -> CascadedPolygonUnion.union(polygons)));
		int segments = Flattened.segments(contours);
		boolean small = segments < 2 * MOST_FOR_AWT;
		if (small) {
			rivals.add(() -> new Area(UnionBenchmark.path(contours)));
		}
		Supplier<?>[] all = rivals.toArray(Supplier[]::new);
		double[] ms = Stopwatch.cpu(!small, all);
		double awt = ms.length > 4 ? ms[4] : Double.POSITIVE_INFINITY;
		double fastest = Math.min(Math.min(ms[2], ms[3]), awt);
		System.out.printf("clean of %s, %d segments: course %.1f ms, union alone %.1f ms; JTS OverlayNG %.1f ms, cascaded %.1f ms; "
				+ "AWT Area %.1f ms%n", name, segments, ms[0], ms[1], ms[2], ms[3], awt);
		System.out.printf("  course to the fastest %.2f (goal 1.5), union alone %.2f%n", ms[0] / fastest, ms[1] / fastest);
		int nodes = course.run(artwork, TOLERANCE, Monitor.NONE).artwork().toOutline().nodeCount();
		int points = OverlayNGRobust.union(polygons).getNumPoints();
		System.out.printf("  nodes out %d, of JTS %d: %.2f (goal 0.5)%n", nodes, points, (double) nodes / points);
		return ms;
	}
}
