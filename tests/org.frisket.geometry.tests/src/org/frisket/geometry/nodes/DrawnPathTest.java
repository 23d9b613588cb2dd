package org.frisket.geometry.nodes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

class DrawnPathTest {

	private static final DrawnPath LINE = DrawnPath.EMPTY.to(new Point(0, 0)).to(new Point(30, 0));
	private static final DrawnPath TRIANGLE = LINE.to(new Point(30, 30));

	@Test
	void clicksSetCorners() {
		assertEquals("M0 0L30 0 30 30", TRIANGLE.open().pathData());
		assertEquals("M0 0L30 0 30 30Z", TRIANGLE.closed().pathData());
	}

	@Test
	void oneNodeIsNoPath() {
		assertTrue(DrawnPath.EMPTY.open().isEmpty());
		assertTrue(DrawnPath.EMPTY.to(new Point(1, 1)).open().isEmpty());
		assertEquals(1, DrawnPath.EMPTY.to(new Point(1, 1)).soFar().nodeCount());
		assertEquals(0, DrawnPath.EMPTY.soFar().nodeCount());
	}

	@Test
	void lineThereAndBackCannotBeClosed() {
		assertFalse(LINE.canClose());
		assertTrue(LINE.closed().isEmpty());
		assertTrue(TRIANGLE.canClose());
		assertTrue(LINE.pulled(new Point(30, 10)).canClose());
	}

	@Test
	void dragPullsHandlesBothWays() {
		DrawnPath curved = LINE.pulled(new Point(30, 10)).to(new Point(0, 40));
		assertEquals("M0 0C0 0 30-10 30 0 30 10 0 40 0 40", curved.open().pathData());
		assertEquals("M0 0C0 0 30-10 30 0 30 10 0 40 0 40L0 0".replace("L0 0", "Z"), curved.closed().pathData());
	}

	@Test
	void handlesOfTheEndsWaitForTheClosing() {
		DrawnPath eye = DrawnPath.EMPTY.to(new Point(0, 0)).pulled(new Point(0, 10)).to(new Point(20, 0))
				.pulled(new Point(20, -10));
		assertEquals("M0 0C0 10 20 10 20 0", eye.open().pathData());
		assertEquals("M0 0C0 10 20 10 20 0 20-10 0-10 0 0Z", eye.closed().pathData());
		assertEquals("M0 0C0 10 20 10 20 0 20-10-5 0 0 0Z", eye.closed(new Point(5, 0)).pathData());
	}

	@Test
	void lastNodeIsTakenBack() {
		assertEquals(LINE, TRIANGLE.withoutLast());
		assertEquals(DrawnPath.EMPTY, DrawnPath.EMPTY.withoutLast());
	}

	@Test
	void previewGoesOnToThePointer() {
		assertEquals("M0 0L30 0 9 9", LINE.towards(new Point(9, 9)).pathData());
		assertEquals("M0 0L30 0C30 10 9 9 9 9".replace("L30 0C", "C0 0 30-10 30 0 "),
				LINE.pulled(new Point(30, 10)).towards(new Point(9, 9)).pathData());
		assertTrue(DrawnPath.EMPTY.towards(new Point(9, 9)).isEmpty());
	}

	@Test
	void stepsAreLevelUprightOrBetween() {
		Point from = new Point(1, 2);
		assertEquals(new Point(11, 2), DrawnPath.stepped(from, new Point(11, 5)));
		assertEquals(new Point(1, -8), DrawnPath.stepped(from, new Point(2, -8)));
		assertEquals(new Point(11, 12), DrawnPath.stepped(from, new Point(10, 13)));
		assertEquals(from, DrawnPath.stepped(from, from));
	}

	@Test
	void stepIsTheNearestPlaceOfItsDirection() {
		Random random = new Random(2);
		for (int round = 0; round < RandomPaths.ROUNDS; round++) {
			Point from = RandomPaths.point(random);
			Point to = RandomPaths.point(random);
			Point way = DrawnPath.stepped(from, to).minus(from);
			assertEquals(0, Math.min(Math.min(Math.abs(way.x()), Math.abs(way.y())),
					Math.abs(Math.abs(way.x()) - Math.abs(way.y()))), 1e-12);
			assertEquals(0, way.dot(to.minus(from).minus(way)), 1e-9);
			assertTrue(way.dot(to.minus(from)) >= Math.cos(Math.PI / 8) * way.length() * to.distance(from) - 1e-9);
		}
	}
}
