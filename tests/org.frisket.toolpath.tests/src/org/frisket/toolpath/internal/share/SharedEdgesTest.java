package org.frisket.toolpath.internal.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Transform;
import org.frisket.toolpath.Drawings;
import org.junit.jupiter.api.Test;

class SharedEdgesTest {

	private static final double TOLERANCE = 0.01;

	/** A grid of boxes without gaps: every line of the grid once. */
	@Test
	void aGridIsCutOnce() {
		List<Contour> boxes = new ArrayList<>();
		for (int row = 0; row < 5; row++) {
			for (int column = 0; column < 7; column++) {
				boxes.add(Drawings.box(10 * column, 6 * row, 10, 6));
			}
		}
		SharedEdges shared = shared(boxes);
		assertEquals(6 * 70 + 8 * 30, length(left(shared, boxes.size())), 1e-9);
		assertSame(boxes.get(0), shared.left(0).get(0));
		for (int i = 1; i < boxes.size(); i++) {
			assertEquals(shared.cluster(0), shared.cluster(i));
			assertTrue(shared.left(i).stream().noneMatch(Contour::isClosed));
		}
	}

	/** Bricks of random sizes, so that edges overlap in part; turned, so that nothing is exact. */
	@Test
	void bricksCoverWhatTheyCoveredAndNoMore() {
		SplittableRandom random = new SplittableRandom(2);
		for (int run = 0; run < 20; run++) {
			List<Contour> bricks = new ArrayList<>();
			double length = 0;
			double last = Double.NaN;
			Transform turn = Transform.rotation(3 * random.nextDouble());
			for (int row = 0; row < 5; row++) {
				double y = 5 * row;
				double end = 0;
				for (int i = 0; i < 6; i++) {
					// edges that overlap do so by more than the tolerance
					double width = 3 + 0.1 * random.nextInt(50);
					Contour brick = Drawings.box(end, y, width, 5).transformed(turn);
					bricks.add(random.nextBoolean() ? brick.reversed() : brick);
					end += width;
				}
				// the sides of its bricks, and the longer of two levels where rows meet
				length += 7 * 5 + (row == 0 ? end : Math.max(last, end)) + (row == 4 ? end : 0);
				last = end;
			}
			List<Contour> left = left(shared(bricks), bricks.size());
			assertEquals(length, length(left), 1e-6, "run " + run);
			for (Contour brick : bricks) {
				for (int i = 0; i < 120; i++) {
					Segment side = brick.segments().get(i % 4);
					Point place = side.at(random.nextDouble());
					assertTrue(distance(place, left) <= TOLERANCE, "not cut: " + place);
				}
			}
		}
	}

	@Test
	void edgesThatAreAlmostTheSame() {
		List<Contour> boxes = List.of(Drawings.box(0, 0, 10, 10), Drawings.polygon(10.006, 0.003, 20, 0, 20, 10, 10.004, 9.995));
		SharedEdges shared = shared(boxes);
		assertEquals(1, shared.left(1).size());
		assertEquals(30, shared.left(1).get(0).length(), 0.05);
		List<Contour> apart = List.of(Drawings.box(0, 0, 10, 10), Drawings.box(10.02, 0, 10, 10));
		assertEquals(80, length(left(shared(apart), 2)), 1e-9);
		assertNotEquals(shared(apart).cluster(0), shared(apart).cluster(1));
	}

	/** A wave between two shapes, run along once this way and once the other. */
	@Test
	void curvesThatAreTheSame() {
		var wave = new org.frisket.geometry.Cubic(new Point(10, 0), new Point(14, 3), new Point(6, 7), new Point(10, 10));
		Contour left = Contour.closed(List.of(line(0, 0, 10, 0), wave, line(10, 10, 0, 10), line(0, 10, 0, 0)));
		Contour right = Contour.closed(List.of(wave.reversed(), line(10, 0, 20, 0), line(20, 0, 20, 10), line(20, 10, 10, 10)));
		SharedEdges shared = shared(List.of(left, right));
		assertEquals(1, shared.left(1).size());
		assertEquals(30, shared.left(1).get(0).length(), 1e-9);
		assertEquals(new Point(10, 0), shared.left(1).get(0).start());
	}

	@Test
	void theSameShapeTwiceLeavesNothing() {
		SharedEdges shared = shared(List.of(Drawings.box(0, 0, 10, 10), Drawings.box(0, 0, 10, 10).reversed()));
		assertEquals(List.of(), shared.left(1));
		assertEquals(shared.cluster(0), shared.cluster(1));
	}

	@Test
	void onlyNeighboursShare() {
		List<Contour> boxes = List.of(Drawings.box(0, 0, 10, 10), Drawings.box(10, 0, 10, 10));
		SharedEdges shared = SharedEdges.of(boxes, (i, k) -> false, TOLERANCE, Monitor.NONE);
		assertSame(boxes.get(1), shared.left(1).get(0));
	}

	private static SharedEdges shared(List<Contour> contours) {
		return SharedEdges.of(contours, (i, k) -> true, TOLERANCE, Monitor.NONE);
	}

	private static List<Contour> left(SharedEdges shared, int count) {
		List<Contour> left = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			left.addAll(shared.left(i));
		}
		return left;
	}

	private static double length(List<Contour> contours) {
		return contours.stream().mapToDouble(Contour::length).sum();
	}

	private static double distance(Point place, List<Contour> contours) {
		return contours.stream().flatMap(contour -> contour.segments().stream()).mapToDouble(segment -> {
			Point way = segment.end().minus(segment.start());
			double t = Math.max(0, Math.min(1, place.minus(segment.start()).dot(way) / way.dot(way)));
			return place.distance(segment.start().towards(segment.end(), t));
		}).min().orElse(Double.POSITIVE_INFINITY);
	}

	private static org.frisket.geometry.Line line(double ax, double ay, double bx, double by) {
		return new org.frisket.geometry.Line(new Point(ax, ay), new Point(bx, by));
	}
}
