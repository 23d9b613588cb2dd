package org.frisket.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;

class PathDataTest {

	private static String echoed(String text) {
		return PathData.format(PathData.parse(text), 4);
	}

	@Test
	void absoluteAndRelativeCommandsDrawTheSame() {
		String square = "M10 10L20 10 20 20 10 20Z";
		assertEquals(square, echoed("M10,10 L20,10 L20,20 L10,20 Z"));
		assertEquals(square, echoed("m10 10 10 0 0 10-10 0z"));
		assertEquals(square, echoed("M10 10H20V20H10Z"));
		assertEquals(square, echoed("m10 10h10v10h-10z"));
		assertEquals("M0 0C1 1 2 1 3 0", echoed("m0 0c1 1 2 1 3 0"));
	}

	@Test
	void smoothCommandsMirrorTheControlPointBefore() {
		assertEquals("M0 0C0 1 1 1 1 0 1 -1 2 -1 2 0".replace(" -", "-"), echoed("M0 0C0 1 1 1 1 0S2-1 2 0"));
		assertEquals(echoed("M0 0Q1 1 2 0Q3-1 4 0"), echoed("M0 0Q1 1 2 0T4 0"));
		assertEquals(echoed("M0 0L1 1C1 1 2 2 3 0"), echoed("M0 0L1 1S2 2 3 0"));
		assertEquals(echoed("M0 0L1 1Q1 1 3 0"), echoed("M0 0L1 1T3 0"));
	}

	@Test
	void numbersMayBePacked() {
		assertEquals("M1.5 0.5L-300 2", echoed("M1.5.5-3e2 2"));
		assertEquals("M0.5-0.5L3 4", echoed("M+.5-.5,3.,4"));
		assertEquals("M0.001 20", echoed("M1e-3 2E+1L.001 20L1e-3 20.0000001").isEmpty() ? "M0.001 20" : "drawn");
	}

	@Test
	void flagsOfArcsMayBePacked() {
		assertEquals(echoed("M0 0A5 5 0 0 1 6 0"), echoed("M0 0A5 5 0 016 0"));
		assertEquals(echoed("M0 0a5 5 0 1 0 6 0 5 5 0 1 0-6 0"), echoed("M0 0a5 5 0 106 0 5 5 0 10-6 0"));
	}

	@Test
	void drawingGoesOnFromTheStartAfterClosing() {
		Outline outline = PathData.parse("M0 0H10V10zL5-5");
		assertEquals(2, outline.contours().size());
		assertTrue(outline.contours().get(0).isClosed());
		assertEquals(new Point(0, 0), outline.contours().get(1).start());
	}

	@Test
	void onlyMovingDrawsNothing() {
		assertTrue(PathData.parse("").isEmpty());
		assertTrue(PathData.parse("  \n").isEmpty());
		assertTrue(PathData.parse("M1 2M3 4z m1 1").isEmpty());
	}

	@Test
	void roundingOfRelativeStepsLeavesNoGap() {
		Outline outline = PathData.parse("m.1.1 .1 0 .1 0 0 .3-.2 0 0-.3z");
		assertEquals(5, outline.contours().get(0).segments().size());
	}

	@Test
	void faultsNamePlaceAndReason() {
		assertFault("L1 1", 0, "moveto");
		assertFault("M1", 2, "number");
		assertFault("M1 1 X", 5, "command");
		assertFault("M1 1 L2,,3", 8, "number");
		assertFault("M1 1,", 5, "after the comma");
		assertFault("M1 1e", 5, "exponent");
		assertFault("M0 0A5 5 0 2 1 6 0", 11, "flag");
		assertFault("M0 0L1e999 0", 5, "too large");
		assertFault("M0 0LNaN 0", 5, "number");
		assertFault("M0 0LInfinity 0", 5, "number");
	}

	private static void assertFault(String text, int position, String reason) {
		PathDataException fault = assertThrows(PathDataException.class, () -> PathData.parse(text), text);
		assertEquals(position, fault.position(), text);
		assertTrue(fault.reason().contains(reason), fault.getMessage());
	}

	/** Worked by the formula of SVG 1.1, appendix F.6.5. Columns: x1 y1 rx ry turn large sweep x2 y2 cx cy from by. */
	@Test
	void arcCentresMatchThePublishedFormula() {
		double[][] table = { { 1, 0, 1, 1, 0, 0, 1, 0, 1, 0, 0, 0, 90 },
				{ 0, 0, 5, 5, 0, 0, 1, 6, 0, 3, 4, -126.8699, 73.7398 },
				{ 0, 0, 5, 5, 0, 0, 0, 6, 0, 3, -4, 126.8699, -73.7398 },
				{ 0, 0, 5, 5, 0, 1, 1, 6, 0, 3, -4, 126.8699, 286.2602 },
				{ 10, 20, 40, 20, 30, 1, 0, 60, 50, 27.363514, 46.385918, -134.890578, -266.364908 },
				{ 0, 0, 3, 3, 0, 0, 1, 10, 0, 5, 0, 180, 180 } };
		for (double[] row : table) {
			EllipticalArc arc = EllipticalArc.between(new Point(row[0], row[1]), new Point(row[7], row[8]), row[2],
					row[3], Math.toRadians(row[4]), row[5] == 1, row[6] == 1);
			assertEquals(row[9], arc.centre().x(), 1e-6);
			assertEquals(row[10], arc.centre().y(), 1e-6);
			double turns = (Math.toDegrees(arc.startAngle()) - row[11]) / 360;
			assertEquals(Math.rint(turns), turns, 1e-6);
			assertEquals(row[12], Math.toDegrees(arc.sweepAngle()), 1e-4);
		}
	}

	@Test
	void arcCubicsFollowTheEllipse() {
		Outline outline = PathData.parse("M1 0A1 1 0 1 1 0-1");
		for (Segment segment : outline.contours().get(0).segments()) {
			for (double t = 0; t <= 1; t += 0.01) {
				assertEquals(1, segment.at(t).length(), 2.8e-4);
			}
		}
		assertEquals(1.5 * Math.PI, outline.contours().get(0).length(), 1e-3);
	}

	@Test
	void largeArcsComeAsCloseAsSmallOnes() {
		for (double radius : new double[] { 1, 15, 100, 1000, 20_000 }) {
			Outline circle = PathData.parse("M%1$s 0A%1$s %1$s 0 0 1 -%1$s 0A%1$s %1$s 0 0 1 %1$s 0Z".formatted(radius));
			for (Segment segment : circle.contours().get(0).segments()) {
				for (double t = 0; t <= 1; t += 1.0 / 64) {
					assertEquals(radius, segment.at(t).length(), 0.005, "radius " + radius);
				}
			}
		}
	}

	@Test
	void anArcBeyondAllMeasureEnds() {
		assertTrue(PathData.parse("M0 0A1e9 1e9 0 0 1 1e9 0").nodeCount() < 2000);
	}

	@Test
	void arcWithoutRadiusIsALineAndWithoutLengthNothing() {
		assertEquals("M0 0L6 0", echoed("M0 0A0 5 0 0 1 6 0"));
		assertEquals("M0 0L6 0", echoed("M0 0A1e-300 1e-300 0 0 1 6 0L6 0"));
		assertTrue(PathData.parse("M0 0A5 5 0 0 1 0 0").isEmpty());
	}

	@Test
	void writingIsShortAndKnowsNoLocale() {
		Locale before = Locale.getDefault();
		Locale.setDefault(Locale.GERMANY);
		try {
			Contour contour = Contour.polygon(List.of(new Point(-0.00001, 0.5), new Point(1000000.25, 2),
					new Point(3.10, -4)));
			assertEquals("M0 0.5L1000000.25 2 3.1-4Z", PathData.format(contour, 3));
		} finally {
			Locale.setDefault(before);
		}
	}

	@Test
	void roundingLeavesNoSegmentWithoutLength() {
		Contour contour = Contour.polygon(List.of(new Point(0, 0), new Point(0.004, 0.003), new Point(1, 0),
				new Point(1, 1), new Point(1.001, 1.002), new Point(0.001, 0.001)));
		assertEquals("M0 0L1 0 1 1Z", PathData.format(contour, 2));
		Contour dust = Contour.polygon(List.of(new Point(0, 0), new Point(0.001, 0), new Point(0, 0.001)));
		assertEquals("", PathData.format(dust, 2));
		assertFalse(PathData.format(dust, 3).isEmpty());
	}

	@Test
	void notFiniteCoordinatesAreRefused() {
		Contour contour = Contour.open(List.of(new Line(Point.ORIGIN, new Point(Double.NaN, 1))));
		assertThrows(IllegalArgumentException.class, () -> PathData.format(contour, 2));
	}

	@Test
	void whatIsWrittenReadsBackToTheSameText() {
		Random random = new Random(5);
		for (int i = 0; i < 300; i++) {
			Outline outline = Outline.of(Shapes.scribble(random, 1 + random.nextInt(5), 100),
					Shapes.polygon(random, 3 + random.nextInt(5), 100));
			int decimals = 2 + random.nextInt(6);
			String text = PathData.format(outline, decimals);
			Outline read = PathData.parse(text);
			assertEquals(text, PathData.format(read, decimals));
			assertEquals(outline.contours().get(0).signedArea(), read.contours().get(0).signedArea(),
					2000 * Math.pow(10, -decimals));
		}
	}
}
