package org.frisket.geometry.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.junit.jupiter.api.Test;

class GapTest {

	private static final Tolerance FINE = new Tolerance(0.01);

	private static Piece piece(String path, Transform place) throws Exception {
		Outline outline = PathData.parse(path).transformed(place);
		return new OutlineCleaner().clean(outline, FillRule.NON_ZERO, FINE, Monitor.NONE).region().pieces().get(0);
	}

	private static Piece disc(double x, double y, double radius) throws Exception {
		return piece("M-1 0A1 1 0 0 0 1 0A1 1 0 0 0 -1 0Z",
				Transform.scaling(radius, radius).then(Transform.translation(x, y)));
	}

	@Test
	void discsAreNearestOnTheLineOfTheirMiddles() throws Exception {
		Random random = new Random(2);
		for (int i = 0; i < 50; i++) {
			double r1 = 0.5 + 4 * random.nextDouble();
			double r2 = 0.5 + 4 * random.nextDouble();
			double angle = random.nextDouble() * 2 * Math.PI;
			double distance = r1 + r2 + 0.1 + 5 * random.nextDouble();
			Point middle = new Point(distance * Math.cos(angle), distance * Math.sin(angle));
			Gap gap = Gap.between(disc(0, 0, r1), disc(middle.x(), middle.y(), r2), FINE);
			assertEquals(distance - r1 - r2, gap.width(), 0.02);
			assertEquals(0, middle.unit().times(r1).distance(gap.from()), 0.05 * r1 + 0.02);
			assertEquals(0, middle.minus(middle.unit().times(r2)).distance(gap.to()), 0.05 * r2 + 0.02);
		}
	}

	@Test
	void middleOfEdgesThatFaceEachOther() throws Exception {
		Random random = new Random(4);
		for (int i = 0; i < 50; i++) {
			double shift = random.nextDouble() * 9;
			Transform turn = Transform.rotation(random.nextDouble() * 6).then(Transform.translation(7, -3));
			Piece one = piece("M0 0V2H10V0Z", turn);
			Piece other = piece("M" + shift + " 5v2h12v-2z", turn);
			Gap gap = Gap.between(one, other, FINE);
			double middle = (shift + Math.min(10, shift + 12)) / 2;
			assertEquals(0, turn.apply(new Point(middle, 2)).distance(gap.from()), 0.05, "shift " + shift);
			assertEquals(0, turn.apply(new Point(middle, 5)).distance(gap.to()), 0.05, "shift " + shift);
		}
	}

	@Test
	void holeCountsAsABoundary() throws Exception {
		Piece ring = piece("M-10 -10V10H10V-10ZM-8 -8H8V8H-8Z", Transform.IDENTITY);
		Gap gap = Gap.between(ring, disc(0, 5, 2), FINE);
		assertEquals(1, gap.width(), 0.02);
		assertEquals(0, gap.from().distance(new Point(0, 8)), 0.1);
	}

	@Test
	void locatorTellsInsideFromOutside() throws Exception {
		PieceLocator ring = new PieceLocator(piece("M-10 -10V10H10V-10ZM-8 -8H8V8H-8Z", Transform.IDENTITY), FINE);
		assertTrue(ring.holds(new Point(9, 0)));
		assertTrue(ring.holds(new Point(-10, 3)));
		assertFalse(ring.holds(new Point(0, 0)));
		assertFalse(ring.holds(new Point(11, 0)));
		assertTrue(ring.holds(ring.inside()));
	}
}
