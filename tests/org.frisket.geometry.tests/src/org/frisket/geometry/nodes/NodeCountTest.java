package org.frisket.geometry.nodes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

class NodeCountTest {

	@Test
	void insertKeepsShapeAndArea() {
		Random random = new Random(3);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			NodePath path = RandomPaths.path(random);
			SegmentAt at = RandomPaths.segment(random, path);
			double t = 0.01 + 0.98 * random.nextDouble();
			NodeCount.Inserted inserted = NodeCount.insert(path, at, t);
			assertEquals(path.nodeCount() + 1, inserted.path().nodeCount());
			assertEquals(0, inserted.path().node(inserted.node()).place().distance(path.segment(at).at(t)), 1e-12);
			assertEquals(RandomPaths.area(path), RandomPaths.area(inserted.path()), 1e-9);
			for (int i = 0; i <= 10; i++) {
				double u = i / 10.0;
				assertEquals(0, inserted.path().segment(at).at(u).distance(path.segment(at).at(u * t)), 1e-9);
				assertEquals(0, inserted.path().segment(new SegmentAt(at.contour(), at.segment() + 1)).at(u)
						.distance(path.segment(at).at(t + u * (1 - t))), 1e-9);
			}
		}
	}

	@Test
	void insertKeepsShapeAsSeenFromOutside() {
		Random random = new Random(4);
		for (int round = 0; round < 40; round++) {
			NodePath path = RandomPaths.path(random);
			NodePath more = NodeCount.insert(path, RandomPaths.segment(random, path), 0.3).path();
			assertEquals(0, RandomPaths.hausdorff(path, more), 1e-9);
		}
	}

	@Test
	void deletingAnInsertedNodeGivesBackTheCurve() {
		Random random = new Random(8);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			NodePath path = RandomPaths.path(random);
			SegmentAt at = RandomPaths.segment(random, path);
			NodeCount.Inserted inserted = NodeCount.insert(path, at, 0.2 + 0.6 * random.nextDouble());
			NodePath back = NodeCount.delete(inserted.path(), List.of(inserted.node()));
			assertEquals(path.nodeCount(), back.nodeCount());
			for (int i = 0; i <= 20; i++) {
				assertEquals(0, path.segment(at).at(i / 20.0).distance(back.segment(at).at(i / 20.0)), 1e-7);
			}
		}
	}

	@Test
	void deletingTwoInsertedNodesFitsTheCurveAgain() {
		Random random = new Random(8);
		for (int round = 0; round < 100; round++) {
			// without loops and cusps, which no fit of one curve can be asked to find again
			NodePath path = NodePath.of(Outline.of(Contour.open(List.of(new Cubic(new Point(0, 0),
					new Point(10 + 20 * random.nextDouble(), 10 + 30 * random.nextDouble()),
					new Point(60 + 20 * random.nextDouble(), 10 + 30 * random.nextDouble()), new Point(90, 0))))));
			NodePath more = NodeCount.insert(NodeCount.insert(path, new SegmentAt(0, 0), 0.6).path(),
					new SegmentAt(0, 0), 0.2 + 0.6 * random.nextDouble()).path();
			NodePath back = NodeCount.delete(more, List.of(new NodeAt(0, 1), new NodeAt(0, 2)));
			assertEquals(2, back.nodeCount());
			assertEquals(0, RandomPaths.hausdorff(path, back), 0.01);
		}
	}

	@Test
	void deletingKeepsTheDirectionsAtTheEnds() {
		Random random = new Random(15);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			NodePath path = RandomPaths.path(random);
			NodeAt at = RandomPaths.node(random, path);
			NodeContour contour = path.contours().get(at.contour());
			if (contour.isEnd(at.node()) || contour.nodes().size() < 3) {
				continue;
			}
			int count = contour.nodes().size();
			int before = (at.node() + count - 1) % count;
			Point leaving = contour.segment(before).startTangent();
			Point arriving = contour.segment(at.node()).endTangent();
			NodeContour left = NodeCount.delete(path, List.of(at)).contours().get(at.contour());
			int joint = at.node() == 0 ? left.nodes().size() - 1 : at.node() - 1;
			if (left.segment(joint) instanceof Cubic cubic) {
				assertEquals(0, cubic.startTangent().distance(leaving), 1e-6);
				assertEquals(0, cubic.endTangent().distance(arriving), 1e-6);
			}
		}
	}

	@Test
	void cornersOfAPolygonAreJoinedByLines() {
		NodePath square = NodePath.parse("M0 0L30 0L30 30L0 30Z");
		assertEquals("M0 0L30 0 0 30Z", NodeCount.delete(square, List.of(new NodeAt(0, 2))).pathData());
		assertEquals("M30 0L30 30 0 30Z", NodeCount.delete(square, List.of(new NodeAt(0, 0))).pathData());
	}

	@Test
	void lineThereAndBackOpens() {
		NodePath triangle = NodePath.parse("M0 0L30 0L30 30Z");
		assertEquals("M0 0L30 0", NodeCount.delete(triangle, List.of(new NodeAt(0, 2))).pathData());
	}

	@Test
	void roundShapeOfTwoNodesStaysClosed() {
		NodePath path = NodePath.parse("M0 0C0 10 10 20 20 20C30 20 40 10 40 0C40 -10 0 -10 0 0Z");
		NodePath left = NodeCount.delete(path, List.of(new NodeAt(0, 1)));
		assertTrue(left.contours().get(0).closed());
		assertEquals(2, left.nodeCount());
		assertEquals(Math.abs(RandomPaths.area(path)), Math.abs(RandomPaths.area(left)), 60);
	}

	@Test
	void openContourIsCutShort() {
		NodePath path = NodePath.parse("M0 0C0 5 5 10 10 10C15 10 20 5 20 0L30 0");
		assertEquals("M10 10C15 10 20 5 20 0L30 0", NodeCount.delete(path, List.of(new NodeAt(0, 0))).pathData());
		assertEquals("M0 0C0 5 5 10 10 10",
				NodeCount.delete(path, List.of(new NodeAt(0, 3), new NodeAt(0, 2))).pathData());
	}

	@Test
	void contourLeftWithOneNodeGoes() {
		NodePath path = NodePath.parse("M0 0L1 1M5 5L6 6L7 5Z");
		assertEquals("M5 5L6 6 7 5Z", NodeCount.delete(path, List.of(new NodeAt(0, 1))).pathData());
		assertEquals("M0 0L1 1", NodeCount.delete(path, List.of(new NodeAt(1, 1), new NodeAt(1, 0))).pathData());
		assertEquals(NodePath.EMPTY, NodeCount.delete(path, path.nodes()));
	}

	@Test
	void deletingNothingChangesNothing() {
		NodePath path = NodePath.parse("M0 0L1 1M5 5L6 6L7 5Z");
		assertEquals(path, NodeCount.delete(path, List.of()));
	}

	@Test
	void nodesThatAreNotThereAreRefused() {
		NodePath path = NodePath.parse("M0 0L1 1");
		assertThrows(IndexOutOfBoundsException.class, () -> NodeCount.delete(path, List.of(new NodeAt(0, 2))));
		assertThrows(IndexOutOfBoundsException.class, () -> NodeCount.insert(path, new SegmentAt(0, 1), 0.5));
	}

	@Test
	void loopOfOneNodeCanBeDivided() {
		NodePath loop = NodePath.parse("M0 0C20 20 -20 20 0 0Z");
		NodePath two = NodeCount.insert(loop, new SegmentAt(0, 0), 0.5).path();
		assertEquals(2, two.nodeCount());
		assertEquals(RandomPaths.area(loop), RandomPaths.area(two), 1e-9);
	}

	@Test
	void symmetricNeighbourBecomesSmooth() {
		NodePath arch = NodePath.parse("M0 0C0 5 5 10 10 10C15 10 20 5 20 0");
		NodePath more = NodeCount.insert(arch, new SegmentAt(0, 1), 0.5).path();
		assertEquals(NodeKind.SMOOTH, more.node(new NodeAt(0, 1)).kind());
	}

	@Test
	void deletedSpikeDoesNotBlowUp() {
		Random random = new Random(77);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			NodePath path = RandomPaths.path(random);
			NodePath left = NodeCount.delete(path, List.of(RandomPaths.node(random, path)));
			assertTrue(left.outline().bounds().width() < 2000 && left.outline().bounds().height() < 2000,
					left.pathData());
		}
	}
}
