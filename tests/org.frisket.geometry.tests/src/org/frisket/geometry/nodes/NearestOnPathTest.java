package org.frisket.geometry.nodes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;

import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

class NearestOnPathTest {

	@Test
	void noPlaceLookedAtCloselyIsNearer() {
		Random random = new Random(17);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			NodePath path = RandomPaths.path(random);
			Point point = RandomPaths.point(random);
			NearestOnPath found = NearestOnPath.of(path, point).orElseThrow();
			assertEquals(found.distance(), found.place().distance(point), 1e-12);
			assertEquals(0, found.place().distance(path.segment(found.segment()).at(found.t())), 1e-12);
			for (SegmentAt at : path.segments()) {
				for (int i = 0; i <= 2000; i++) {
					double seen = path.segment(at).at(i / 2000.0).distance(point);
					assertTrue(seen >= found.distance() - 1e-6, () -> "nearer: " + seen + " than " + found);
				}
			}
		}
	}

	@Test
	void pointOfTheCurveIsFoundThere() {
		NodePath path = NodePath.parse("M0 0L100 0C120 0 120 40 100 40L0 40Z");
		NearestOnPath found = NearestOnPath.of(path, path.segment(new SegmentAt(0, 1)).at(0.3)).orElseThrow();
		assertEquals(new SegmentAt(0, 1), found.segment());
		assertEquals(0.3, found.t(), 1e-7);
		assertEquals(0, found.distance(), 1e-7);
	}

	@Test
	void endsAreFoundExactly() {
		NodePath path = NodePath.parse("M0 0C10 0 20 10 20 20");
		assertEquals(new Point(0, 0), NearestOnPath.of(path, new Point(-5, -5)).orElseThrow().place());
		assertEquals(1, NearestOnPath.of(path, new Point(20, 50)).orElseThrow().t());
	}

	@Test
	void nodeIsFoundWithinReachOnly() {
		NodePath path = NodePath.parse("M0 0L10 0L10 10");
		assertEquals(Optional.of(new NodeAt(0, 1)), NearestOnPath.node(path, new Point(9, 1), 2));
		assertEquals(Optional.empty(), NearestOnPath.node(path, new Point(5, 5), 2));
	}

	@Test
	void emptyPathHasNothingNear() {
		assertEquals(Optional.empty(), NearestOnPath.of(NodePath.EMPTY, Point.ORIGIN));
		assertEquals(Optional.empty(), NearestOnPath.node(NodePath.EMPTY, Point.ORIGIN, 9));
	}
}
