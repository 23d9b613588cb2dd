package org.frisket.benchmarks;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.measure.Straying;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offsets;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Four outsets of one region against the buffer of JTS at an error no larger than ours, as measured. */
final class OutsetBenchmark {

	private static final double[] DISTANCES = { 1, 2, 4, 8 };
	private static final double EXACT = 2e-4;
	private static final int MOST_QUADRANT_SEGMENTS = 200;

	private OutsetBenchmark() {
	}

	static void run() {
		Region region = new OutlineCleaner().clean(new Outline(Flattened.crowd(300)), FillRule.NON_ZERO, Tolerance.DEFAULT,
				Monitor.NONE).region();
		List<Region> truth = new ArrayList<>();
		Geometry fine = Polygons.of(region, EXACT);
		for (double distance : DISTANCES) {
			truth.add(Polygons.toRegion(jts(fine, distance, MOST_QUADRANT_SEGMENTS)));
		}
		double error = error(ours(region), truth);
		int quadrant = 2;
		double chord = Tolerance.DEFAULT.mm();
		while (error(peers(region, chord, quadrant), truth) > error && quadrant < MOST_QUADRANT_SEGMENTS) {
			quadrant *= 2;
			chord /= 2;
		}
		int segments = quadrant;
		double deviation = chord;
		double[] ms = Stopwatch.mediansOfFew(() -> ours(region), () -> peers(region, deviation, segments));
		int nodes = ours(region).stream().mapToInt(Region::nodeCount).sum();
		int points = peers(region, deviation, segments).stream().mapToInt(Region::nodeCount).sum();
		System.out.printf("outset of %d segments, %d times: %.1f ms; JTS buffer %.1f ms at an error of %.4f and %.4f mm%n",
				region.nodeCount(), DISTANCES.length, ms[0], ms[1], error, error(peers(region, deviation, segments), truth));
		System.out.printf("  ratio %.2f (goal 1); nodes out %d, of JTS %d: %.2f (goal 0.5)%n", ms[0] / ms[1], nodes, points,
				(double) nodes / points);
	}

	private static List<Region> ours(Region region) {
		Offsets offsets = new Offsets(region, Tolerance.DEFAULT);
		List<Region> outsets = new ArrayList<>();
		for (double distance : DISTANCES) {
			outsets.add(offsets.at(distance, Corners.ROUND, Holes.KEEP, Monitor.NONE));
		}
		return outsets;
	}

	private static List<Region> peers(Region region, double deviation, int quadrant) {
		Geometry flattened = Polygons.of(region, deviation);
		List<Region> outsets = new ArrayList<>();
		for (double distance : DISTANCES) {
			outsets.add(Polygons.toRegion(jts(flattened, distance, quadrant)));
		}
		return outsets;
	}

	private static Geometry jts(Geometry geometry, double distance, int quadrant) {
		BufferParameters parameters = new BufferParameters(quadrant);
		parameters.setSimplifyFactor(1e-4);
		return BufferOp.bufferOp(geometry, distance, parameters);
	}

	/** The largest Hausdorff distance of any of them. */
	private static double error(List<Region> found, List<Region> truth) {
		double most = 0;
		for (int i = 0; i < found.size(); i++) {
			most = Math.max(most, Straying.of(found.get(i).contours(), truth.get(i).contours(), EXACT, Monitor.NONE).mm());
			most = Math.max(most, Straying.of(truth.get(i).contours(), found.get(i).contours(), EXACT, Monitor.NONE).mm());
		}
		return most;
	}
}
