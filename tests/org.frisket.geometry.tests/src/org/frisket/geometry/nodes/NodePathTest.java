package org.frisket.geometry.nodes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.PathData;
import org.frisket.geometry.PathDataException;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.junit.jupiter.api.Test;

class NodePathTest {

	@Test
	void pathDataAndBackKeepsEveryBit() {
		Random random = new Random(71);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			NodePath path = RandomPaths.path(random);
			assertEquals(path, NodePath.parse(path.pathData()));
			assertEquals(PathData.parse(path.pathData()), path.outline());
		}
	}

	@Test
	void numbersAreAsShortAsTheyCanBe() {
		assertEquals("M0 0L10.5 0 0 0.25Z", NodePath.parse("M 0,0 L 10.50 0 L 0 0.250 Z").pathData());
		assertEquals("M0 0L0.1 0.30000000000000004", NodePath.parse("M0 0L0.1 0.30000000000000004").pathData());
		assertEquals("M0 0L1E-12 7", NodePath.parse("M0 0L0.000000000001 7").pathData());
	}

	@Test
	void coordinateThatIsNoNumberIsRefused() {
		NodePath path = NodePath.parse("M0 0L1 1").with(new NodeAt(0, 1), PathNode.corner(new Point(Double.NaN, 0)));
		assertThrows(IllegalArgumentException.class, path::pathData);
	}

	@Test
	void damagedPathDataIsRefusedWithItsPlace() {
		assertEquals(6, assertThrows(PathDataException.class, () -> NodePath.parse("M0 0L x")).position());
	}

	@Test
	void nodesStandWhereSegmentsMeet() {
		NodePath path = NodePath.parse("M0 0L10 0C12 0 14 2 14 4Z M1 1L2 2");
		assertEquals(List.of(new NodeAt(0, 0), new NodeAt(0, 1), new NodeAt(0, 2), new NodeAt(1, 0), new NodeAt(1, 1)),
				path.nodes());
		assertEquals(4, path.segments().size());
		assertEquals(5, path.nodeCount());
		PathNode second = path.node(new NodeAt(0, 1));
		assertEquals(new Point(10, 0), second.place());
		assertNull(second.in());
		assertEquals(new Point(12, 0), second.out());
		assertTrue(path.segment(new SegmentAt(0, 0)) instanceof Line);
		assertTrue(path.segment(new SegmentAt(0, 1)) instanceof Cubic);
		assertEquals(new NodeAt(0, 0), path.end(new SegmentAt(0, 2)));
	}

	@Test
	void closedContourWithoutAClosingLineHasNoDoubleNode() {
		assertEquals(3, NodePath.parse("M0 0L10 0L0 10L0 0Z").nodeCount());
	}

	@Test
	void kindsAreWhatTheHandlesLookLike() {
		assertEquals(NodeKind.SYMMETRIC, PathNode.of(new Point(0, 0), new Point(-2, -2), new Point(2, 2)).kind());
		assertEquals(NodeKind.SMOOTH, PathNode.of(new Point(0, 0), new Point(-2, -2), new Point(5, 5)).kind());
		assertEquals(NodeKind.CORNER, PathNode.of(new Point(0, 0), new Point(-2, -2), new Point(5, 6)).kind());
		assertEquals(NodeKind.CORNER, PathNode.of(new Point(0, 0), new Point(2, 2), new Point(5, 5)).kind());
		assertEquals(NodeKind.CORNER, PathNode.of(new Point(0, 0), new Point(0, 0), new Point(5, 5)).kind());
		assertEquals(NodeKind.CORNER, PathNode.of(new Point(0, 0), null, new Point(5, 5)).kind());
	}

	@Test
	void kindsSurviveRoundingToThreeDecimals() {
		NodePath path = NodePath.parse("M0 0C3 1 7 7.123 9.001 8.001C14.004 10.196 20 20 30 30");
		assertEquals(NodeKind.SMOOTH, path.node(new NodeAt(0, 1)).kind());
	}

	@Test
	void nodeWithoutBothHandlesIsACornerWhateverIsSaid() {
		assertEquals(NodeKind.CORNER, new PathNode(Point.ORIGIN, null, Point.ORIGIN, NodeKind.SMOOTH).kind());
	}

	@Test
	void contourThatContradictsItselfIsRefused() {
		PathNode corner = PathNode.corner(Point.ORIGIN);
		PathNode handle = corner.with(Side.OUT, new Point(1, 1));
		assertThrows(IllegalArgumentException.class, () -> new NodeContour(List.of(), true));
		assertThrows(IllegalArgumentException.class, () -> new NodeContour(List.of(handle, corner), false));
		assertThrows(IllegalArgumentException.class, () -> new NodeContour(List.of(corner, handle), false));
	}

	@Test
	void placesThatAreNotThereAreRefused() {
		NodePath path = NodePath.parse("M0 0L1 1L2 0");
		assertThrows(IndexOutOfBoundsException.class, () -> path.node(new NodeAt(0, 3)));
		assertThrows(IndexOutOfBoundsException.class, () -> path.node(new NodeAt(1, 0)));
		assertThrows(IndexOutOfBoundsException.class, () -> path.segment(new SegmentAt(0, 2)));
		assertTrue(path.has(new NodeAt(0, 2)));
		assertFalse(path.has(new NodeAt(0, 3)));
		assertFalse(path.has(new NodeAt(0, -1)));
	}

	@Test
	void emptyPathDataIsAnEmptyPath() {
		assertEquals(NodePath.EMPTY, NodePath.parse(""));
		assertEquals("", NodePath.EMPTY.pathData());
		assertTrue(NodePath.parse("M 3 4").isEmpty());
	}

	@Test
	void mapMovesHandlesToo() {
		NodePath path = NodePath.parse("M1 2C3 4 5 6 7 8");
		assertEquals("M11 2C13 4 15 6 17 8", path.transformed(Transform.translation(10, 0)).pathData());
	}
}
