package org.frisket.geometry.nodes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

class NodeShapesTest {

	private static final NodePath SQUARE = NodePath.parse("M0 0L30 0L30 30L0 30Z");

	@Test
	void smoothCornerOfASquareSwingsEvenly() {
		NodePath smooth = NodeShapes.kind(SQUARE, List.of(new NodeAt(0, 1)), NodeKind.SMOOTH);
		PathNode node = smooth.node(new NodeAt(0, 1));
		double reach = 10 * Math.sqrt(0.5);
		assertEquals(0, node.in().distance(new Point(30 - reach, -reach)), 1e-8);
		assertEquals(0, node.out().distance(new Point(30 + reach, reach)), 1e-8);
		assertEquals(NodeKind.SMOOTH, node.kind());
		assertTrue(smooth.segment(new SegmentAt(0, 0)) instanceof Cubic);
		assertTrue(smooth.segment(new SegmentAt(0, 2)) instanceof Line);
	}

	@Test
	void orderOfNodesDoesNotMatter() {
		List<NodeAt> all = SQUARE.nodes();
		List<NodeAt> turned = List.of(all.get(2), all.get(0), all.get(3), all.get(1));
		assertEquals(NodeShapes.kind(SQUARE, all, NodeKind.SYMMETRIC),
				NodeShapes.kind(SQUARE, turned, NodeKind.SYMMETRIC));
	}

	@Test
	void smoothNodesHaveNoKink() {
		Random random = new Random(21);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			NodePath path = RandomPaths.path(random);
			NodeAt at = RandomPaths.node(random, path);
			for (NodeKind kind : List.of(NodeKind.SMOOTH, NodeKind.SYMMETRIC)) {
				NodePath smooth = NodeShapes.kind(path, List.of(at), kind);
				if (path.isEnd(at)) {
					assertEquals(path, smooth);
					continue;
				}
				PathNode node = smooth.node(at);
				Point in = node.place().minus(node.in());
				Point out = node.out().minus(node.place());
				assertEquals(1, in.unit().dot(out.unit()), 1e-9);
				assertEquals(kind, node.kind());
				if (kind == NodeKind.SYMMETRIC) {
					assertEquals(in.length(), out.length(), 1e-8);
				}
				assertEquals(path.nodeCount(), smooth.nodeCount());
			}
		}
	}

	@Test
	void wayThatTurnsStraightBackGoesAcross() {
		NodePath spike = NodePath.parse("M0 0L30 0L0 0L0 9");
		PathNode tip = NodeShapes.kind(spike, List.of(new NodeAt(0, 1)), NodeKind.SMOOTH).node(new NodeAt(0, 1));
		assertEquals(30, tip.in().x(), 1e-9);
		assertEquals(10, Math.abs(tip.in().y()), 1e-9);
	}

	@Test
	void cornerOnlyFreesItsHandles() {
		NodePath arch = NodePath.parse("M0 0C0 5 5 10 10 10C15 10 20 5 20 0");
		NodePath corner = NodeShapes.kind(arch, List.of(new NodeAt(0, 1)), NodeKind.CORNER);
		assertEquals(arch.pathData(), corner.pathData());
		assertEquals(NodeKind.CORNER, corner.node(new NodeAt(0, 1)).kind());
		NodePath moved = NodeMoves.handle(corner, new HandleAt(new NodeAt(0, 1), Side.OUT), new Point(15, 5), false);
		assertEquals(new Point(5, 10), moved.node(new NodeAt(0, 1)).in());
	}

	@Test
	void lineLosesHandlesAndKinds() {
		NodePath arch = NodePath.parse("M0 0C0 5 5 10 10 10C15 10 20 5 20 0");
		NodePath lined = NodeShapes.lines(arch, List.of(new SegmentAt(0, 0)));
		assertEquals("M0 0L10 10C15 10 20 5 20 0", lined.pathData());
		assertEquals(NodeKind.CORNER, lined.node(new NodeAt(0, 1)).kind());
	}

	@Test
	void curveFromALineRunsAsTheLineDid() {
		NodePath curved = NodeShapes.curves(SQUARE, List.of(new SegmentAt(0, 3)));
		assertEquals("M0 0L30 0 30 30 0 30C0 20 0 10 0 0Z", curved.pathData());
		assertEquals(RandomPaths.area(SQUARE), RandomPaths.area(curved), 1e-9);
		NodePath arch = NodePath.parse("M0 0C0 5 5 10 10 10");
		assertSame(arch, NodeShapes.curves(arch, arch.segments()));
	}

	@Test
	void toCurveAndBackToLineIsTheSame() {
		assertEquals(SQUARE, NodeShapes.lines(NodeShapes.curves(SQUARE, SQUARE.segments()), SQUARE.segments()));
	}

	@Test
	void segmentThatIsNotThereIsRefused() {
		NodePath open = NodePath.parse("M0 0L30 0");
		assertThrows(IndexOutOfBoundsException.class, () -> NodeShapes.lines(open, List.of(new SegmentAt(0, 1))));
		assertThrows(IndexOutOfBoundsException.class, () -> NodeShapes.curves(open, List.of(new SegmentAt(0, 1))));
	}
}
