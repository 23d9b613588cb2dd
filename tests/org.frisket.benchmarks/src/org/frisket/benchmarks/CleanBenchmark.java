package org.frisket.benchmarks;

import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.RepairCourse;
import org.frisket.prepare.RepairSteps;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/** The whole course of repair, curves in and curves out, against bare unions of the same shapes, as they grow. */
final class CleanBenchmark {

	private static final Tolerance TOLERANCE = Tolerance.DEFAULT;
	private static final int[] SIZES = { 1_000, 10_000, 30_000 };
	/** The union of AWT grows with the square. */
	private static final int MOST_FOR_AWT = 10_000;

	private CleanBenchmark() {
	}

	static void run() throws Exception {
		RepairCourse course = RepairSteps.course(Map.of());
		for (int size : SIZES) {
			List<Contour> crowd = Flattened.crowd(size);
			Outline outline = new Outline(crowd);
			Artwork artwork = new Artwork(List.of(new Artwork.Area(outline, FillRule.NON_ZERO)), List.of());
			List<Geometry> polygons = Flattened.polygons(crowd, TOLERANCE.mm() / 2);
			List<Supplier<?>> rivals = new ArrayList<>(List.of( //
					() -> course.run(artwork, TOLERANCE, Monitor.NONE),
					() -> new OutlineCleaner().clean(outline, FillRule.NON_ZERO, TOLERANCE, Monitor.NONE),
					() -> OverlayNGRobust.union(polygons), () -> CascadedPolygonUnion.union(polygons)));
			if (size <= MOST_FOR_AWT) {
				rivals.add(() -> new Area(UnionBenchmark.path(crowd)));
			}
			Supplier<?>[] all = rivals.toArray(Supplier[]::new);
			double[] ms = size <= MOST_FOR_AWT ? Stopwatch.mediansOfFew(all) : Stopwatch.once(all);
			double awt = ms.length > 4 ? ms[4] : Double.POSITIVE_INFINITY;
			double fastest = Math.min(Math.min(ms[2], ms[3]), awt);
			System.out.printf("clean of %d segments: course %.1f ms, union alone %.1f ms; JTS OverlayNG %.1f ms, cascaded %.1f ms; "
					+ "AWT Area %.1f ms%n", Flattened.segments(crowd), ms[0], ms[1], ms[2], ms[3], awt);
			System.out.printf("  course to the fastest %.2f (goal 1.5), union alone %.2f%n", ms[0] / fastest, ms[1] / fastest);
			int nodes = course.run(artwork, TOLERANCE, Monitor.NONE).artwork().toOutline().nodeCount();
			int points = OverlayNGRobust.union(polygons).getNumPoints();
			System.out.printf("  nodes out %d, of JTS %d: %.2f (goal 0.5)%n", nodes, points, (double) nodes / points);
		}
	}
}
