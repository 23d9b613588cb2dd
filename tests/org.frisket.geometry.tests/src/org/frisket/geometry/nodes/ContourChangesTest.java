package org.frisket.geometry.nodes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;

import org.junit.jupiter.api.Test;

class ContourChangesTest {

	private static final double REACH = 0.01;

	@Test
	void closedContourBreaksOpenAtTheNode() {
		NodePath square = NodePath.parse("M0 0L30 0L30 30L0 30Z");
		NodePath broken = ContourChanges.breakAt(square, new NodeAt(0, 2));
		assertEquals("M30 30L0 30 0 0 30 0 30 30", broken.pathData());
		assertEquals(broken, NodePath.parse(broken.pathData()));
	}

	@Test
	void breakKeepsHandles() {
		NodePath eye = NodePath.parse("M0 0C5 10 15 10 20 0C15 -10 5 -10 0 0Z");
		assertEquals("M20 0C15-10 5-10 0 0 5 10 15 10 20 0",
				ContourChanges.breakAt(eye, new NodeAt(0, 1)).pathData());
	}

	@Test
	void openContourBreaksInTwo() {
		NodePath path = NodePath.parse("M0 0L10 0L10 10L0 10");
		assertEquals("M0 0L10 0M10 0L10 10 0 10", ContourChanges.breakAt(path, new NodeAt(0, 1)).pathData());
		assertSame(path, ContourChanges.breakAt(path, new NodeAt(0, 0)));
		assertSame(path, ContourChanges.breakAt(path, new NodeAt(0, 3)));
	}

	@Test
	void openAndCloseAreEachOthersOpposite() {
		Random random = new Random(31);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			NodePath path = RandomPaths.path(random);
			NodePath opened = ContourChanges.open(path, 0);
			if (path.contours().get(0).closed()) {
				assertEquals(path, ContourChanges.close(opened, 0, REACH));
			} else {
				assertSame(path, opened);
			}
		}
	}

	@Test
	void endsApartAreClosedByALine() {
		assertEquals("M0 0L10 0 10 10Z", ContourChanges.close(NodePath.parse("M0 0L10 0L10 10"), 0, REACH).pathData());
	}

	@Test
	void endsThatNearlyMeetBecomeOneHalfWay() {
		assertEquals("M0 0.002L10 0 10 10Z",
				ContourChanges.close(NodePath.parse("M0 0L10 0L10 10L0 0.004"), 0, REACH).pathData());
	}

	@Test
	void closedContourStaysAsItIs() {
		NodePath square = NodePath.parse("M0 0L30 0L30 30L0 30Z");
		assertSame(square, ContourChanges.close(square, 0, REACH));
	}

	@Test
	void allFourWaysToJoinTwoContoursKeepTheFirstOnesDirection() {
		NodePath path = NodePath.parse("M0 0L1 0M5 0L6 0");
		assertEquals("M0 0L1 0 5 0 6 0", joined(path, 1, 0));
		assertEquals("M0 0L1 0 6 0 5 0", joined(path, 1, 1));
		assertEquals("M6 0L5 0 0 0 1 0", joined(path, 0, 0));
		assertEquals("M5 0L6 0 0 0 1 0", joined(path, 0, 1));
	}

	private static String joined(NodePath path, int first, int second) {
		return ContourChanges.join(path, new NodeAt(0, first), new NodeAt(1, second), REACH).pathData();
	}

	@Test
	void joinMergesEndsThatMeetAndKeepsTheirHandles() {
		NodePath path = NodePath.parse("M0 0C0 5 5 10 10 10M10 10C15 10 20 5 20 0M40 40L50 50");
		NodePath joined = ContourChanges.join(path, new NodeAt(0, 1), new NodeAt(1, 0), REACH);
		assertEquals("M0 0C0 5 5 10 10 10 15 10 20 5 20 0M40 40L50 50", joined.pathData());
		assertEquals(NodeKind.SYMMETRIC, joined.node(new NodeAt(0, 1)).kind());
	}

	@Test
	void joinedContourTakesTheEarlierPlace() {
		NodePath path = NodePath.parse("M0 0L1 0M40 40L50 50M5 0L6 0");
		assertEquals("M5 0L6 0 0 0 1 0M40 40L50 50",
				ContourChanges.join(path, new NodeAt(2, 1), new NodeAt(0, 0), REACH).pathData());
	}

	@Test
	void bothEndsOfOneContourCloseIt() {
		NodePath path = NodePath.parse("M0 0L10 0L10 10");
		assertEquals("M0 0L10 0 10 10Z",
				ContourChanges.join(path, new NodeAt(0, 2), new NodeAt(0, 0), REACH).pathData());
	}

	@Test
	void whatIsNoEndCannotBeJoined() {
		NodePath path = NodePath.parse("M0 0L10 0L10 10M1 1L2 2L3 1Z");
		assertThrows(IllegalArgumentException.class,
				() -> ContourChanges.join(path, new NodeAt(0, 1), new NodeAt(0, 0), REACH));
		assertThrows(IllegalArgumentException.class,
				() -> ContourChanges.join(path, new NodeAt(0, 0), new NodeAt(1, 0), REACH));
		assertThrows(IllegalArgumentException.class,
				() -> ContourChanges.join(path, new NodeAt(0, 0), new NodeAt(0, 0), REACH));
	}

	@Test
	void reversedTwiceIsTheSame() {
		Random random = new Random(41);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			NodePath path = RandomPaths.path(random);
			NodePath turned = ContourChanges.reverse(path, 0);
			assertEquals(path, ContourChanges.reverse(turned, 0));
			if (path.contours().get(0).closed()) {
				assertEquals(path.node(new NodeAt(0, 0)).place(), turned.node(new NodeAt(0, 0)).place());
			}
			assertEquals(path.contours().get(0).contour().signedArea(),
					-turned.contours().get(0).contour().signedArea(), 1e-7);
		}
	}
}
