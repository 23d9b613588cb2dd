package org.frisket.benchmarks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offsets;
import org.frisket.typography.FontFace;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Four outsets of one region against the buffer of JTS at the same tolerances, and at an error no larger than ours. The
 * errors are measured from the shape itself. One thread each.
 */
final class OutsetBenchmark {

	private static final double[] DISTANCES = { 1, 2, 4, 8 };
	private static final double[] TOLERANCES = { 0.1, 0.02, 0.01, 0.005 };
	/** JTS does not come nearer with more: it drops offset points that lie near to each other. */
	private static final int MOST_REFINEMENTS = 4;

	private OutsetBenchmark() {
	}

	/** Four outsets by the buffer, curves flattened within half a tolerance, the arcs' chords within the other. */
	private record Peer(Region region, double tolerance) {

		List<Region> outsets() {
			Geometry flattened = Polygons.of(region, tolerance / 2);
			List<Region> outsets = new ArrayList<>();
			for (double distance : DISTANCES) {
				BufferParameters parameters = new BufferParameters(quadrantSegments(distance));
				parameters.setSimplifyFactor(1e-4);
				outsets.add(Polygons.toRegion(BufferOp.bufferOp(flattened, distance, parameters)));
			}
			return outsets;
		}

		private int quadrantSegments(double distance) {
			return (int) Math.ceil(Math.PI / 2 / (2 * Math.acos(1 - tolerance / (2 * distance))));
		}
	}

	static void run() throws Exception {
		run("crowd", clean(new Outline(Flattened.crowd(300))));
		FontFace face = FontFace.read(Path.of("/usr/share/fonts/opentype/dancingscript/DancingScript-Regular.otf"));
		Setting setting = Setting.ofCapHeight(20);
		run("script", clean(TextSetter.set("harbour lane paperworks", face, setting, Monitor.NONE).outline()));
	}

	private static Region clean(Outline outline) {
		return new OutlineCleaner().clean(outline, FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE).region();
	}

	private static void run(String name, Region region) {
		List<OutsetError> errors = new ArrayList<>();
		for (double distance : DISTANCES) {
			errors.add(new OutsetError(region, distance));
		}
		System.out.printf("outset of %s, %d segments, %d times%n", name, region.nodeCount(), DISTANCES.length);
		for (double mm : TOLERANCES) {
			Tolerance tolerance = new Tolerance(mm);
			double error = error(errors, ours(region, tolerance));
			Peer same = new Peer(region, mm);
			double peersError = error(errors, same.outsets());
			Peer equal = same;
			double equalError = peersError;
			Peer trial = same;
			for (int i = 0; i < MOST_REFINEMENTS && equalError > error; i++) {
				trial = new Peer(region, trial.tolerance / 2);
				double trialError = error(errors, trial.outsets());
				if (trialError < equalError) {
					equal = trial;
					equalError = trialError;
				}
			}
			Peer nearest = equal;
			double[] ms = Stopwatch.mediansOfFew(() -> ours(region, tolerance), same::outsets, nearest::outsets);
			System.out.printf("  tolerance %.3f: %.1f ms, error %.4f, %d nodes; JTS %.1f ms, %.4f, %d nodes: ratio %.2f%n",
					mm, ms[0], error, nodes(ours(region, tolerance)), ms[1], peersError, nodes(same.outsets()), ms[0] / ms[1]);
			System.out.printf("    at %s error: JTS %.1f ms, %.4f: ratio %.2f (goal 1)%n",
					equalError <= error ? "no larger" : "its least", ms[2], equalError, ms[0] / ms[2]);
		}
	}

	private static double error(List<OutsetError> errors, List<Region> outsets) {
		double most = 0;
		for (int i = 0; i < outsets.size(); i++) {
			most = Math.max(most, errors.get(i).of(outsets.get(i)));
		}
		return most;
	}

	private static int nodes(List<Region> outsets) {
		return outsets.stream().mapToInt(Region::nodeCount).sum();
	}

	private static List<Region> ours(Region region, Tolerance tolerance) {
		Offsets offsets = new Offsets(region, tolerance);
		List<Region> outsets = new ArrayList<>();
		for (double distance : DISTANCES) {
			outsets.add(offsets.at(distance, Corners.ROUND, Holes.KEEP, Monitor.NONE));
		}
		return outsets;
	}
}
