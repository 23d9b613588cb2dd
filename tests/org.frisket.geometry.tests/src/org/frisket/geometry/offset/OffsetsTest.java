package org.frisket.geometry.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import java.util.stream.IntStream;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.fit.Samples;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class OffsetsTest {

	private static final Tolerance TOLERANCE = new Tolerance(0.05);

	/** A row of blobs, some farther apart than others. */
	private static Region row(Random random, int count) {
		List<Piece> pieces = new ArrayList<>();
		double x = 0;
		for (int i = 0; i < count; i++) {
			Region blob = Samples.region(Samples.blob(random, 4)).transformed(Transform.translation(x, 3 * random.nextDouble()));
			pieces.addAll(blob.pieces());
			x += 11 + 12 * random.nextDouble();
		}
		return new Region(pieces);
	}

	private static Region at(Offsets offsets, double distance) {
		return offsets.at(distance, Corners.ROUND, Holes.KEEP, Monitor.NONE);
	}

	@Test
	void farOffsetsInStepsLieWithinTheToleranceOfAFinePolygonBuffer() {
		Random random = new Random(21);
		BufferParameters fine = new BufferParameters(400);
		fine.setSimplifyFactor(1e-7);
		for (int i = 0; i < 12; i++) {
			Region row = row(random, 1 + i % 4);
			double distance = new double[] { 2, 2.1, 3, 4, 6.5, 9, 17, 40 }[i % 8];
			Region result = at(new Offsets(row, TOLERANCE), distance);
			Geometry truth = BufferOp.bufferOp(Polygons.of(row, 1e-4), distance, fine);
			assertTrue(Samples.hausdorff(truth, Polygons.of(result, 1e-4)) <= TOLERANCE.mm(),
					"seed 21, row " + i + " by " + distance);
		}
	}

	@Test
	void offsetIsTheSameWhateverElseWasAskedForAndRemembered() {
		Random random = new Random(22);
		Region row = row(random, 4);
		List<Double> distances = new ArrayList<>(List.of(1.0, 3.0, 4.0, 6.0, 9.0, 20.0));
		List<Region> alone = distances.stream().map(distance -> at(new Offsets(row, TOLERANCE), distance)).toList();
		Map<Object, Object> kept = new HashMap<>();
		Memory memory = new Memory() {
			@Override
			@SuppressWarnings("unchecked")
			public <R> R get(Object key, Supplier<R> computation) {
				// what is computed may ask for something else that is kept
				R result = kept.containsKey(key) ? (R) kept.get(key) : computation.get();
				kept.put(key, result);
				return result;
			}
		};
		List<Integer> order = new ArrayList<>(IntStream.range(0, distances.size()).boxed().toList());
		for (int round = 0; round < 5; round++) {
			Collections.shuffle(order, random);
			Offsets shared = new Offsets(row, TOLERANCE, memory, memory);
			for (int i : order) {
				assertEquals(alone.get(i), at(shared, distances.get(i)), "by " + distances.get(i));
			}
		}
		assertTrue(kept.size() > 1, "parts are kept each for itself");
	}

	@Test
	void offsetsMadeSideBySideAreThoseMadeOneByOne() {
		Region row = row(new Random(23), 5);
		Offsets shared = new Offsets(row, TOLERANCE);
		List<Double> distances = List.of(3.0, 6.0, 9.0, 12.0, 3.5, 18.0);
		List<Region> together = distances.parallelStream().map(distance -> at(shared, distance)).toList();
		assertEquals(distances.stream().map(distance -> at(new Offsets(row, TOLERANCE), distance)).toList(), together);
	}

	/** Says stop when it is asked for the so-maniest time. */
	private static final class Polls implements Monitor {

		private final int stop;
		private int asked;

		Polls(int stop) {
			this.stop = stop;
		}

		@Override
		public boolean isCancelled() {
			return ++asked >= stop;
		}
	}

	@Test
	void monitorIsAskedTheMoreOftenTheMoreThereIsToDo() {
		for (int count : new int[] { 3, 12, 48 }) {
			Region row = row(new Random(22), count);
			Polls polls = new Polls(Integer.MAX_VALUE);
			Region result = new Offsets(row, TOLERANCE).at(1, Corners.ROUND, Holes.KEEP, polls);
			// at each piece to grow, at each curve to fit, at each contour to check; a curve is a few segments
			assertTrue(polls.asked >= 2 * count + result.nodeCount() / 4,
					polls.asked + " polls for " + count + " pieces, " + result.nodeCount() + " segments");
			assertTrue(polls.asked <= 100 * (count + result.nodeCount()), polls.asked + " polls cost more than they give");
		}
	}

	@Test
	void workEndsAtWhicheverPollSaysSo() {
		Region row = row(new Random(23), 6);
		Polls all = new Polls(Integer.MAX_VALUE);
		new Offsets(row, TOLERANCE).at(5, Corners.ROUND, Holes.KEEP, all);
		assertTrue(all.asked > 30, all.asked + " polls");
		for (int stop = 1; stop <= all.asked; stop += 7) {
			Polls polls = new Polls(stop);
			assertThrows(CancellationException.class,
					() -> new Offsets(row, TOLERANCE).at(5, Corners.ROUND, Holes.KEEP, polls), "poll " + stop);
			assertEquals(stop, polls.asked);
		}
	}
}
