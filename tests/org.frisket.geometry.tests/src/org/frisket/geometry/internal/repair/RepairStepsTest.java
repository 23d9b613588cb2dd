package org.frisket.geometry.internal.repair;

import static org.frisket.geometry.internal.repair.Courses.area;
import static org.frisket.geometry.internal.repair.Courses.kinds;
import static org.frisket.geometry.internal.repair.Courses.length;
import static org.frisket.geometry.internal.repair.Courses.lines;
import static org.frisket.geometry.internal.repair.Courses.run;
import static org.frisket.geometry.internal.repair.Courses.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.junit.jupiter.api.Test;

/** Each step on artwork small enough to see what is right. */
class RepairStepsTest {

	private static final double CLOSE = 1e-9;

	@Test
	void doubledLinesGoAndTheEarlierStays() {
		Mended mended = step(new DoubledLines(), lines("M0 0H20 M20 0.005H0 M0 5H20"));
		assertEquals(lines("M0 0H20 M0 5H20"), mended.artwork());
		assertEquals(List.of("doubled-line-removed"), kinds(mended));
		assertEquals(20, mended.mends().get(0).amount(), CLOSE);
		assertEquals(10, mended.mends().get(0).place().x(), 0.1);
	}

	@Test
	void onlyTheCoveredStretchGoes() {
		Mended mended = step(new DoubledLines(), lines("M0 0H20 M10 0H30 M-5 0H25"));
		assertEquals(35, length(mended.artwork()), 0.05);
		assertEquals(35, mended.mends().stream().mapToDouble(Mend::amount).sum(), 0.05);
	}

	@Test
	void doubledCurvesGoWhateverTheirNodes() {
		Mended mended = step(new DoubledLines(),
				lines("M0 0C0 10 10 20 20 20 M20 20C17.5 20 15 19.375 12.65625 18.28125 C5.625 15 0 7.5 0 0"));
		assertEquals(1, mended.artwork().lines().size(), mended.artwork().toString());
	}

	@Test
	void linesThatCrossOrTouchStay() {
		for (String data : List.of("M0 0H20 M0 -0.2L20 0.2", "M0 0H20 M10 0V10", "M0 0H20 M5 10A10 10 0 1 1 15 10",
				"M0 0H20 M20 0H40", "M0 0H20 M0 0.03H20", "M0 0h0.01h0.01h0.01h0.01h0.01v3")) {
			assertEquals(lines(data), step(new DoubledLines(), lines(data)).artwork(), data);
		}
	}

	@Test
	void lineThatComesBackIsRunOnce() {
		assertEquals(20, length(step(new DoubledLines(), lines("M0 0H20H0")).artwork()), 0.3);
		assertEquals(20, length(step(new DoubledLines(), lines("M0 0H20V0.001H0")).artwork()), 0.3);
	}

	@Test
	void closedLinesGoAsAWholeUnlessToldOtherwise() {
		Artwork neighbours = lines("M0 0H10V10H0Z M10 0H20V10H10Z");
		assertEquals(neighbours, step(new DoubledLines(), neighbours).artwork());
		assertEquals(70, length(step(new DoubledLines(), neighbours, Map.of("doubled", "partly")).artwork()), 0.1);
		assertEquals(1, step(new DoubledLines(), lines("M0 0H10V10H0Z M10 10V0H0V10Z")).artwork().lines().size());
	}

	@Test
	void looseLinesBecomeContours() {
		Mended mended = step(new LooseLines(), lines("M0 0H10 M10.03 10V0.01 M0 10H10 M0 0.005V10"));
		assertEquals(1, mended.artwork().lines().size());
		assertTrue(mended.artwork().lines().get(0).isClosed());
		assertEquals(100, Math.abs(mended.artwork().lines().get(0).signedArea()), 0.3);
		assertEquals(4, mended.mends().size());
		assertEquals(0.04, 2 * Courses.TOLERANCE.mm(), "the widest gap that closes");
		assertEquals(lines("M0 0H10 M10.041 0H20"), step(new LooseLines(), lines("M0 0H10 M10.041 0H20")).artwork());
	}

	@Test
	void straightestGoesOnAtAFork() {
		Mended mended = step(new LooseLines(), lines("M0 0L10 0 M10 0L20 5 M10 0L20 1 M10 0L11 9"));
		Contour chained = mended.artwork().lines().get(0);
		assertEquals(new Point(20, 1), chained.end());
		assertEquals(2, mended.artwork().lines().size(), "and the other two go on into each other");
	}

	@Test
	void contoursCloseWithinReach() {
		Mended mended = step(new OpenContours(), lines("M0 0H10V10H0V0.03"));
		assertTrue(mended.artwork().lines().get(0).isClosed());
		assertEquals(new Mend("contour-closed", new Point(0, 0.015), 0.03, "mm"), mended.mends().get(0));
		Artwork wide = lines("M0 0H10V10H0V0.5");
		assertEquals(wide, step(new OpenContours(), wide).artwork());
		Contour bridged = step(new OpenContours(), wide, Map.of("reach", "0.6mm")).artwork().lines().get(0);
		assertTrue(bridged.isClosed());
		assertEquals(5, bridged.nodeCount(), "a wide gap is bridged, nothing moves");
		assertEquals(lines("M0 0H0.02"), step(new OpenContours(), lines("M0 0H0.02")).artwork(), "a mere dash");
	}

	@Test
	void nestedLinesAreShapeAndHoleAndCrossingOnesUnited() {
		Mended nested = run(lines("M0 0H30V30H0Z M5 5H25V25H5Z M10 10H20V20H10Z"));
		assertEquals(900 - 400 + 100, area(nested.artwork()), 0.01);
		Mended crossing = run(lines("M0 0H10V10H0Z M5 15V5H15V15Z"));
		assertEquals(175, area(crossing.artwork()), 0.01);
		Mended nearlyTwice = run(lines("M0 0H10V10H0Z M0.01 0.01H9.99V9.99H0.01Z"));
		assertEquals(100, area(nearlyTwice.artwork()), 0.5, "nearly the same line is no hole");
	}

	@Test
	void closedLinesMayStayLines() {
		Artwork lines = lines("M0 0H30V30H0Z M5 5H25V25H5Z");
		assertEquals(lines, step(new ClosedLines(), lines, Map.of("closed", "lines")).artwork());
	}

	@Test
	void lineInsideWhatIsFilledIsNotLost() {
		Artwork both = area("M0 0H30V30H0Z").withLines(lines("M5 5H25V25H5Z").lines());
		Mended mended = run(both);
		assertEquals(both.lines(), mended.artwork().lines());
		assertEquals(900, area(mended.artwork()), 0.01);
	}

	@Test
	void areasThatRunOppositeWaysAddUp() {
		Artwork artwork = new Artwork(List.of(area("M0 0H10V10H0Z").areas().get(0), area("M5 5V15H15V5Z").areas().get(0)),
				List.of());
		assertEquals(175, area(step(new UnitedAreas(), artwork).artwork()), 0.01);
	}

	@Test
	void specksSliversAndSpikesGo() {
		Mended mended = step(new Specks(), area("M0 0V10H10V0Z M20 0V0.05H20.05V0Z M30 0V0.02H40V0Z"));
		assertEquals(List.of("sliver-removed", "speck-removed"), kinds(mended));
		assertEquals(100, area(mended.artwork()), CLOSE);
		Mended spike = step(new Specks(), area("M0 0V10H10V5.002L15 5.001L10 5V0Z"));
		assertEquals(List.of("spike-removed"), kinds(spike));
		assertEquals(10, spike.artwork().toOutline().bounds().width(), 0.001);
		assertEquals(5, spike.mends().get(0).amount(), 0.01);
		assertEquals(3, step(new Specks(), area("M0 0V10H10V0Z M20 0V0.05H20.05V0Z M30 0V0.02H40V0Z"),
				Map.of("speck", "0mm", "sliver", "0mm")).artwork().toOutline().contours().size());
	}

	@Test
	void manyShortStrokesBecomeCurvesAndCornersStay() {
		StringBuilder data = new StringBuilder("M0 0");
		for (int i = 0; i <= 400; i++) {
			double angle = Math.PI * i / 400;
			data.append("L").append(10 + 10 * Math.cos(Math.PI - angle)).append(' ').append(10 + 10 * Math.sin(angle));
		}
		Artwork strokes = area(data.append("L20 0Z").toString());
		Mended mended = step(new SimplerCurves(), strokes);
		assertEquals(List.of("curve-simplified"), kinds(mended));
		assertTrue(mended.artwork().toOutline().nodeCount() <= 10, mended.artwork().toString());
		assertEquals(Math.abs(area(strokes)), area(mended.artwork()), 0.02);
		List<Point> nodes = mended.artwork().toOutline().contours().get(0).segments().stream().map(s -> s.start()).toList();
		assertTrue(nodes.containsAll(List.of(new Point(0, 0), new Point(20, 0))), nodes.toString());
		assertEquals(mended.artwork(), step(new SimplerCurves(), mended.artwork()).artwork());
		assertEquals(strokes, step(new SimplerCurves(), strokes, Map.of("simplify", "off")).artwork());
		int turned = step(new SimplerCurves(), new Artwork(List.of(), strokes.areas().get(0).outline().contours()))
				.artwork().lines().get(0).nodeCount();
		assertTrue(turned <= 10, "a line too");
	}

	@Test
	void clearArtworkIsLeftAlone() {
		Artwork clear = area("M0 0L0 10L10 10L10 0Z").withLines(lines("M20 0H30 M20 5C25 5 25 9 30 9").lines());
		assertEquals(clear, run(clear).artwork());
		assertEquals(List.of(), run(clear).mends());
		Artwork nothing = new Artwork(List.of(), List.of());
		assertEquals(nothing, run(nothing).artwork());
	}

	@Test
	void whatIsNotFiniteIsRefused() {
		for (double bad : new double[] { Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY }) {
			Contour open = Contour.open(List.of(new Line(new Point(0, 0), new Point(bad, 1)), new Line(new Point(bad, 1), new Point(3, 4))));
			Contour closed = Contour.polygon(List.of(new Point(0, 0), new Point(9, bad), new Point(0, 9)));
			for (Artwork artwork : List.of(new Artwork(List.of(), List.of(open)), new Artwork(List.of(), List.of(closed)),
					new Artwork(List.of(new Artwork.Area(Outline.of(closed), FillRule.NON_ZERO)), List.of()))) {
				assertThrows(IllegalArgumentException.class, () -> run(artwork));
			}
		}
	}

	@Test
	void canBeCancelled() {
		assertThrows(CancellationException.class,
				() -> Courses.recommended().run(lines("M0 0H10"), Courses.TOLERANCE, () -> true));
	}
}
