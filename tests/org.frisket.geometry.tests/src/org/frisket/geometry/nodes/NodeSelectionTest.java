package org.frisket.geometry.nodes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

/** Selections, and what is done to what they hold. */
class NodeSelectionTest {

	private static final NodePath SQUARE = NodePath.parse("M0 0L30 0L30 30L0 30Z M50 0L60 0L60 10");
	private static final NodeAt A = new NodeAt(0, 0);
	private static final NodeAt B = new NodeAt(0, 1);
	private static final NodeAt D = new NodeAt(0, 3);

	private static NodeChange.Outcome outcome(NodeChange change, NodeAt... nodes) {
		return change.on(SQUARE, NodeSelection.of(nodes)).orElseThrow();
	}

	private static void assertNothing(NodeChange change, NodeAt... nodes) {
		assertEquals(Optional.empty(), change.on(SQUARE, NodeSelection.of(nodes)));
	}

	@Test
	void orderAndRepetitionDoNotMatter() {
		assertEquals(NodeSelection.of(A, B), NodeSelection.of(B, A, B));
	}

	@Test
	void toggleTakesInAndOut() {
		assertEquals(NodeSelection.of(A, B), NodeSelection.of(A).toggled(B));
		assertEquals(NodeSelection.of(A), NodeSelection.of(A, B).toggled(B));
	}

	@Test
	void boxHoldsNodesByTheirPlace() {
		assertEquals(NodeSelection.of(A, B), NodeSelection.within(SQUARE, new Bounds(-1, -1, 31, 1)));
	}

	@Test
	void stepsGoRoundTheWholePath() {
		NodeSelection at = NodeSelection.NONE;
		for (NodeAt expected : SQUARE.nodes()) {
			at = at.stepped(SQUARE, true);
			assertEquals(NodeSelection.of(expected), at);
		}
		assertEquals(NodeSelection.of(A), at.stepped(SQUARE, true));
		assertEquals(NodeSelection.of(new NodeAt(1, 2)), NodeSelection.of(A).stepped(SQUARE, false));
		assertEquals(NodeSelection.of(new NodeAt(1, 2)), NodeSelection.NONE.stepped(SQUARE, false));
		assertEquals(NodeSelection.NONE, NodeSelection.NONE.stepped(NodePath.EMPTY, true));
	}

	@Test
	void segmentsNeedBothEnds() {
		assertEquals(List.of(new SegmentAt(0, 0)), NodeSelection.of(A, B).segments(SQUARE));
		assertEquals(List.of(new SegmentAt(0, 3)), NodeSelection.of(A, D).segments(SQUARE));
		assertEquals(List.of(), NodeSelection.of(B, D).segments(SQUARE));
	}

	@Test
	void sameCountKeepsNumbersAndAnotherCountPlaces() {
		NodePath moved = NodeMoves.nodes(SQUARE, List.of(B), new Point(5, 5));
		assertEquals(NodeSelection.of(B), NodeSelection.of(B).kept(SQUARE, moved));
		NodePath more = NodeCount.insert(SQUARE, new SegmentAt(0, 0), 0.5).path();
		assertEquals(NodeSelection.of(A, new NodeAt(0, 2)), NodeSelection.of(A, B).kept(SQUARE, more));
		assertEquals(NodeSelection.NONE, NodeSelection.of(new NodeAt(0, 1)).kept(more, SQUARE));
	}

	@Test
	void addDividesTheSegmentsBetweenSelectedNodes() {
		NodeChange.Outcome added = outcome(NodeChange.ADD, A, B, new NodeAt(0, 2));
		assertEquals("M0 0L15 0 30 0 30 15 30 30 0 30ZM50 0L60 0 60 10", added.path().pathData());
		assertEquals(NodeSelection.of(new NodeAt(0, 1), new NodeAt(0, 3)), added.selection());
		assertEquals(2, added.count());
	}

	@Test
	void addDividesTheSegmentAfterASingleNode() {
		assertEquals("M0 0L30 0 30 30 0 30 0 15ZM50 0L60 0 60 10", outcome(NodeChange.ADD, D).path().pathData());
		assertNothing(NodeChange.ADD, new NodeAt(1, 2));
		assertNothing(NodeChange.ADD);
	}

	@Test
	void deleteLeavesNothingSelected() {
		NodeChange.Outcome left = outcome(NodeChange.DELETE, A, new NodeAt(1, 0));
		assertEquals("M30 0L30 30 0 30ZM60 0L60 10", left.path().pathData());
		assertEquals(NodeSelection.NONE, left.selection());
		assertEquals(2, left.count());
		assertNothing(NodeChange.DELETE);
	}

	@Test
	void curveAndLineTouchSelectedSegmentsOnly() {
		NodeChange.Outcome curved = outcome(NodeChange.CURVE, A, B);
		assertEquals("M0 0C10 0 20 0 30 0L30 30 0 30ZM50 0L60 0 60 10", curved.path().pathData());
		assertEquals(SQUARE, NodeChange.LINE.on(curved.path(), curved.selection()).orElseThrow().path());
		assertNothing(NodeChange.LINE, A, B);
	}

	@Test
	void kindsOfCornersWithoutHandles() {
		assertNothing(NodeChange.CORNER, A);
		assertEquals(NodeKind.SMOOTH, outcome(NodeChange.SMOOTH, B).path().node(B).kind());
		assertEquals(NodeKind.SYMMETRIC, outcome(NodeChange.SYMMETRIC, B).path().node(B).kind());
	}

	@Test
	void breakJoinAndClose() {
		assertEquals("M30 0L30 30 0 30 0 0 30 0M50 0L60 0 60 10", outcome(NodeChange.BREAK, B).path().pathData());
		assertNothing(NodeChange.BREAK, A, B);
		assertNothing(NodeChange.BREAK, new NodeAt(1, 0));
		assertEquals("M0 0L30 0 30 30 0 30ZM50 0L60 0 60 10Z",
				outcome(NodeChange.JOIN, new NodeAt(1, 0), new NodeAt(1, 2)).path().pathData());
		assertNothing(NodeChange.JOIN, A, B);
		assertEquals("M0 0L30 0 30 30 0 30ZM50 0L60 0 60 10Z",
				outcome(NodeChange.CLOSE, new NodeAt(1, 1)).path().pathData());
		assertNothing(NodeChange.CLOSE, A);
	}

	@Test
	void reverseKeepsTheSamePlacesSelected() {
		NodeChange.Outcome turned = outcome(NodeChange.REVERSE, B, new NodeAt(1, 0));
		assertEquals("M0 0L0 30 30 30 30 0ZM60 10L60 0 50 0", turned.path().pathData());
		List<Point> places = turned.selection().nodes().stream().map(at -> turned.path().node(at).place()).toList();
		assertEquals(List.of(new Point(30, 0), new Point(50, 0)), places);
		assertFalse(NodeChange.REVERSE.on(SQUARE, NodeSelection.of(A)).orElseThrow().selection().isEmpty());
	}

	@Test
	void nothingSelectedChangesNothing() {
		for (NodeChange change : NodeChange.values()) {
			assertNothing(change);
		}
	}
}
