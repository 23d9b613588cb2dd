package org.frisket.geometry.form;

import static org.frisket.geometry.form.Regions.TOLERANCE;
import static org.frisket.geometry.form.Regions.assertWithin;
import static org.frisket.geometry.form.Regions.random;
import static org.frisket.geometry.form.Regions.region;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.junit.jupiter.api.Test;

class FramesAndHolesTest {

	@Test
	void frameAreasFollowTheirFormulas() {
		Region word = region(Shapes.rectangle(0, 0, 40, 10), Shapes.circle(50, 5, 5));
		double a = 55 + 2 * 3;
		double b = 10 + 2 * 3;
		Frame plain = new Frame(Frame.Kind.RECTANGLE, 3, 2, 0);
		Region ring = plain.around(word, TOLERANCE, Monitor.NONE);
		assertEquals(2 * 2 * (a + b) + 4 * 4, ring.area(), 1e-6);
		assertEquals(1, ring.pieces().get(0).holes().size());
		assertEquals((a + 4) * (b + 4), plain.plate(word, TOLERANCE, Monitor.NONE).area(), 1e-6);

		Region rounded = new Frame(Frame.Kind.RECTANGLE, 3, 2, 5).around(word, TOLERANCE, Monitor.NONE);
		assertEquals(2 * 2 * (a + b) + 16 - (4 - Math.PI) * (25 - 9), rounded.area(), TOLERANCE.mm() * rounded.perimeter());
		Region sharpWithin = new Frame(Frame.Kind.RECTANGLE, 3, 2, 1).around(word, TOLERANCE, Monitor.NONE);
		assertEquals(2 * 2 * (a + b) + 16 - (4 - Math.PI), sharpWithin.area(), TOLERANCE.mm() * sharpWithin.perimeter());

		// along a parallel to a convex curve of length P: P w + pi w², Steiner 1840
		Region oval = new Frame(Frame.Kind.ELLIPSE, 1, 2, 0).around(word, TOLERANCE, Monitor.NONE);
		double inner = oval.pieces().get(0).holes().get(0).length();
		assertEquals(2 * inner + Math.PI * 4, oval.area(), TOLERANCE.mm() * oval.perimeter());
		assertEquals(Math.PI * (55 / Math.sqrt(2) + 1) * (10 / Math.sqrt(2) + 1),
				oval.pieces().get(0).holes().get(0).signedArea(), TOLERANCE.mm() * inner);
		assertTrue(new Frame(Frame.Kind.ELLIPSE, 1, 2, 0).around(Region.EMPTY, TOLERANCE, Monitor.NONE).isEmpty());
		Region full = new Frame(Frame.Kind.RECTANGLE, -6, 2, 0).around(word, TOLERANCE, Monitor.NONE);
		assertEquals(0, full.pieces().stream().mapToInt(p -> p.holes().size()).sum());
	}

	@Test
	void holesAreFilledByTheDiscThatFits() {
		Region plate = region(Shapes.rectangle(0, 0, 40, 20), Shapes.circle(8, 10, 2).reversed(),
				Shapes.circle(20, 10, 4).reversed(), Shapes.rectangle(30, 2, 1, 16).reversed(), Shapes.circle(20, 10, 1));
		assertEquals(2, plate.pieces().size());
		assertEquals(3, holes(SmallHoles.filled(plate, 0.9, TOLERANCE, Monitor.NONE)));
		assertEquals(2, holes(SmallHoles.filled(plate, 1.5, TOLERANCE, Monitor.NONE)));
		assertEquals(1, holes(SmallHoles.filled(plate, 4.5, TOLERANCE, Monitor.NONE)));
		Region full = SmallHoles.filled(plate, 9, TOLERANCE, Monitor.NONE);
		assertEquals(800, full.area(), 1e-9);
		assertEquals(1, full.pieces().size());
	}

	private static int holes(Region region) {
		return region.pieces().stream().mapToInt(piece -> piece.holes().size()).sum();
	}

	/** Steiner 1840: what an opening takes off a square, and that a closing takes nothing. */
	@Test
	void openedSquaresLoseTheirCornersAndClosedOnesNothing() {
		Region square = region(Shapes.rectangle(0, 0, 10, 10));
		for (double r : new double[] { 0.5, 1, 3 }) {
			double slack = TOLERANCE.mm() * 40;
			assertEquals(100 - (4 - Math.PI) * r * r, Offset.opened(square, r, TOLERANCE, Monitor.NONE).area(), slack);
			assertEquals(100, Offset.closed(square, r, TOLERANCE, Monitor.NONE).area(), slack);
		}
		Region apart = region(Shapes.rectangle(0, 0, 10, 10), Shapes.rectangle(11, 0, 10, 10));
		assertEquals(1, Offset.closed(apart, 1, TOLERANCE, Monitor.NONE).pieces().size(), "bridged");
		assertEquals(2, Offset.closed(apart, 0.4, TOLERANCE, Monitor.NONE).pieces().size(), "too wide");
	}

	@Test
	void outsetThenInsetOfConvexHullsGivesThemBack() {
		Random random = new Random(127);
		for (int i = 0; i < 40; i++) {
			Region hull = ConvexHull.of(random(random), TOLERANCE, Monitor.NONE);
			for (Corners corners : List.of(Corners.ROUND, Corners.MITRE, Corners.BEVEL)) {
				Region there = Offset.of(hull, 2, corners, Holes.KEEP, TOLERANCE, Monitor.NONE);
				Region back = Offset.of(there, -2, corners, Holes.KEEP, TOLERANCE, Monitor.NONE);
				if (corners != Corners.BEVEL) {
					assertEquals(hull.area(), back.area(), 2 * TOLERANCE.mm() * hull.perimeter(), "number " + i);
				}
				assertWithin(back, hull, "number " + i);
			}
		}
	}
}
