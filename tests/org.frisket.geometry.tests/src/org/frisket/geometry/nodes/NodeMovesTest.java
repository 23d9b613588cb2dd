package org.frisket.geometry.nodes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

class NodeMovesTest {

	private static final NodePath ARCH = NodePath.parse("M0 0C0 5 5 10 10 10C15 10 20 5 20 0");
	private static final NodeAt TOP = new NodeAt(0, 1);

	@Test
	void nodesTakeTheirHandlesAlong() {
		NodePath moved = NodeMoves.nodes(ARCH, List.of(TOP), new Point(1, 2));
		assertEquals("M0 0C0 5 6 12 11 12 16 12 20 5 20 0", moved.pathData());
	}

	@Test
	void severalNodesMoveTogether() {
		assertEquals("M1 0C1 5 5 10 10 10 15 10 21 5 21 0",
				NodeMoves.nodes(ARCH, List.of(new NodeAt(0, 0), new NodeAt(0, 2)), new Point(1, 0)).pathData());
	}

	@Test
	void addingUpLeavesNoDust() {
		NodePath path = NodePath.parse("M0 0L5 0");
		for (int i = 0; i < 10; i++) {
			path = NodeMoves.nodes(path, List.of(new NodeAt(0, 0)), new Point(0.1, 0));
		}
		assertEquals("M1 0L5 0", path.pathData());
	}

	@Test
	void movingThereAndBackGivesTheSamePathData() {
		Random random = new Random(5);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			NodePath path = NodePath.parse(org.frisket.geometry.PathData.format(RandomPaths.path(random).outline(), 3));
			NodeAt at = RandomPaths.node(random, path);
			Point by = new Point(random.nextInt(1000) / 100.0, random.nextInt(1000) / 100.0);
			NodePath there = NodeMoves.nodes(path, List.of(at), by);
			assertEquals(path.pathData(), NodeMoves.nodes(there, List.of(at), by.times(-1)).pathData());
		}
	}

	@Test
	void symmetricHandlesMirrorEachOther() {
		NodePath moved = NodeMoves.handle(ARCH, new HandleAt(TOP, Side.OUT), new Point(13, 14), false);
		assertEquals("M0 0C0 5 7 6 10 10 13 14 20 5 20 0", moved.pathData());
		assertEquals(NodeKind.SYMMETRIC, moved.node(TOP).kind());
	}

	@Test
	void smoothHandleTurnsTheOppositeAndLeavesItsLength() {
		NodePath smooth = NodeShapes.kind(ARCH, List.of(TOP), NodeKind.SMOOTH);
		NodePath moved = NodeMoves.handle(smooth, new HandleAt(TOP, Side.OUT), new Point(10, 20), false);
		assertEquals(new Point(10, 5), moved.node(TOP).in());
		assertEquals(new Point(10, 20), moved.node(TOP).out());
	}

	@Test
	void smoothHandlesStaySmoothWhereverTheyGo() {
		Random random = new Random(9);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			double length = ARCH.node(TOP).in().distance(ARCH.node(TOP).place());
			NodePath moved = NodeMoves.handle(NodeShapes.kind(ARCH, List.of(TOP), NodeKind.SMOOTH),
					new HandleAt(TOP, Side.OUT), RandomPaths.point(random), false);
			PathNode node = moved.node(TOP);
			assertEquals(length, node.in().distance(node.place()), 1e-8);
			assertEquals(-1, node.in().minus(node.place()).unit().dot(node.out().minus(node.place()).unit()), 1e-12);
		}
	}

	@Test
	void handleDrawnInLeavesTheOppositeAlone() {
		NodePath moved = NodeMoves.handle(ARCH, new HandleAt(TOP, Side.OUT), new Point(10, 10), false);
		assertEquals(new Point(5, 10), moved.node(TOP).in());
	}

	@Test
	void handleMovedAloneMakesACorner() {
		NodePath moved = NodeMoves.handle(ARCH, new HandleAt(TOP, Side.OUT), new Point(13, 14), true);
		assertEquals("M0 0C0 5 5 10 10 10 13 14 20 5 20 0", moved.pathData());
		assertEquals(NodeKind.CORNER, moved.node(TOP).kind());
	}

	@Test
	void handleOfALineIsRefused() {
		NodePath line = NodePath.parse("M0 0L5 0");
		assertThrows(IllegalArgumentException.class,
				() -> NodeMoves.handle(line, new HandleAt(new NodeAt(0, 0), Side.OUT), Point.ORIGIN, false));
	}

	@Test
	void draggedCurvePassesThroughThePointer() {
		Random random = new Random(13);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			NodePath curve = NodePath.parse("M0 0C10 40 60 -40 80 0");
			double t = 0.1 + 0.8 * random.nextDouble();
			Point to = RandomPaths.point(random);
			NodePath bent = NodeMoves.segment(curve, new SegmentAt(0, 0), t, to);
			assertEquals(0, bent.segment(new SegmentAt(0, 0)).at(t).distance(to), 1e-7);
			assertEquals(curve.node(new NodeAt(0, 0)).place(), bent.node(new NodeAt(0, 0)).place());
			assertEquals(curve.node(new NodeAt(0, 1)).place(), bent.node(new NodeAt(0, 1)).place());
		}
	}

	@Test
	void draggedCurveKeepsItsSmoothNeighboursSmooth() {
		NodePath bent = NodeMoves.segment(ARCH, new SegmentAt(0, 0), 0.5, new Point(0, 12));
		PathNode top = bent.node(TOP);
		assertEquals(0, top.place().minus(top.in()).distance(top.out().minus(top.place())), 1e-8);
	}

	@Test
	void draggedLineGoesAlongWithBothNodes() {
		NodePath path = NodePath.parse("M0 0L10 0L10 10Z");
		assertEquals("M0 3L10 3 10 10Z",
				NodeMoves.segment(path, new SegmentAt(0, 0), 0.25, new Point(2.5, 3)).pathData());
	}

	@Test
	void parameterOutsideIsRefused() {
		for (double t : new double[] { 0, 1, -1, 2, Double.NaN }) {
			assertThrows(IllegalArgumentException.class,
					() -> NodeMoves.segment(ARCH, new SegmentAt(0, 0), t, Point.ORIGIN));
			assertThrows(IllegalArgumentException.class, () -> NodeCount.insert(ARCH, new SegmentAt(0, 0), t));
		}
	}
}
