package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.Repair.Kind;
import org.junit.jupiter.api.Test;

class OutlineCleanerTest {

	private static final double TOLERANCE = 0.02;

	private static CleanResult clean(Outline outline, FillRule rule) {
		CleanResult result = new OutlineCleaner().clean(outline, rule, new Tolerance(TOLERANCE), Monitor.NONE);
		RegionAssert.assertClean(result.region(), TOLERANCE, "cleaned");
		return result;
	}

	private static Region region(Contour... contours) {
		return clean(Outline.of(contours), FillRule.NON_ZERO).region();
	}

	private static boolean has(CleanResult result, Kind kind) {
		return result.repairs().stream().anyMatch(r -> r.kind() == kind);
	}

	/** By plane geometry: a pentagram on the unit circle has 1.122570 inside, 0.775677 without its pentagon. */
	@Test
	void pentagramAreasFollowTheFillRule() {
		Outline star = Outline.of(Shapes.pentagram()).transformed(Transform.scaling(100, 100));
		assertEquals(11225.70, clean(star, FillRule.NON_ZERO).region().area(), 0.005);
		Region evenOdd = clean(star, FillRule.EVEN_ODD).region();
		// five points, drawn apart where their corners met
		assertEquals(5, evenOdd.pieces().size());
		assertEquals(7756.77, evenOdd.area(), 2 * TOLERANCE * evenOdd.perimeter());
		assertEquals(14694.63, Math.abs(star.contours().get(0).signedArea()), 0.005);
	}

	@Test
	void whatMeetsNothingComesOutAsItWentIn() {
		Contour circle = Shapes.circle(0, 0, 5);
		Region region = region(circle);
		assertEquals(List.copyOf(circle.segments()).size(), region.nodeCount());
		assertTrue(region.contours().get(0).segments().containsAll(circle.segments()));
	}

	@Test
	void curvesAwayFromACrossingSurvive() {
		Contour left = Shapes.circle(0, 0, 5);
		Contour right = Shapes.circle(8, 0, 5);
		List<Segment> union = region(left, right).contours().get(0).segments();
		assertTrue(union.stream().allMatch(s -> s instanceof Cubic));
		assertTrue(union.contains(left.segments().get(1)) && union.contains(left.segments().get(2)));
		assertTrue(union.contains(right.segments().get(0)) && union.contains(right.segments().get(3)));
		assertEquals(8, union.size());
	}

	@Test
	void cutCurvesAreStretchesOfTheirSource() {
		Contour left = Shapes.circle(0, 0, 5);
		Contour right = Shapes.circle(8, 0, 5);
		for (Segment segment : region(left, right).contours().get(0).segments()) {
			for (double t = 0; t <= 1; t += 0.125) {
				Point p = segment.at(t);
				double off = Math.min(Math.abs(p.length() - 5), Math.abs(p.distance(new Point(8, 0)) - 5));
				assertTrue(off < 5 * 2.8e-4);
			}
		}
		Point crossing = new Point(4, 3);
		assertTrue(region(left, right).contours().get(0).segments().stream()
				.anyMatch(s -> s.start().distance(crossing) < 5 * 2.8e-4));
	}

	@Test
	void openContourWithinTheToleranceIsClosed() {
		Outline outline = PathData.parse("M0 0H10V10H0V0.015");
		CleanResult result = clean(outline, FillRule.NON_ZERO);
		assertEquals(100, result.region().area(), 0.1);
		assertEquals(0.015, result.repairs().get(0).amount(), 1e-12);
		assertEquals(Kind.CONTOUR_CLOSED, result.repairs().get(0).kind());
	}

	@Test
	void openContourBeyondTheToleranceIsHandedBack() {
		Outline outline = PathData.parse("M0 0H10V10H0V1");
		CleanResult result = clean(outline, FillRule.NON_ZERO);
		assertTrue(result.region().isEmpty());
		assertEquals(outline.contours(), result.open());
		assertEquals(Kind.CONTOUR_LEFT_OPEN, result.repairs().get(0).kind());
		assertEquals(1, result.repairs().get(0).amount(), 1e-12);
	}

	@Test
	void duplicateIsRemovedAndReported() {
		Contour circle = Shapes.circle(0, 0, 5);
		CleanResult result = clean(Outline.of(circle, circle), FillRule.NON_ZERO);
		assertTrue(has(result, Kind.DUPLICATE_REMOVED));
		assertEquals(region(circle), result.region());
	}

	@Test
	void oppositeDuplicateCancelsOut() {
		Contour circle = Shapes.circle(0, 0, 5);
		assertTrue(region(circle, circle.reversed()).isEmpty());
	}

	@Test
	void doubledWindingStaysInsideAndIsTurnedRound() {
		CleanResult result = clean(Outline.of(Shapes.rectangle(0, 0, 10, 10).reversed(),
				Shapes.rectangle(2, 2, 4, 4).reversed()), FillRule.NON_ZERO);
		assertEquals(100, result.region().area(), 1e-9);
		assertEquals(1, result.region().contours().size());
		assertTrue(has(result, Kind.WINDING_FIXED));
	}

	@Test
	void counterOfEitherWindingIsAHoleByEvenOdd() {
		Outline outline = Outline.of(Shapes.rectangle(0, 0, 10, 10), Shapes.rectangle(2, 2, 4, 4));
		Region region = clean(outline, FillRule.EVEN_ODD).region();
		assertEquals(84, region.area(), 1e-9);
		assertEquals(1, region.pieces().size());
		assertEquals(1, region.pieces().get(0).holes().size());
	}

	@Test
	void islandInAHoleIsAPieceOfItsOwn() {
		Region region = clean(Outline.of(Shapes.rectangle(4, 4, 2, 2), Shapes.rectangle(0, 0, 10, 10),
				Shapes.rectangle(2, 2, 6, 6)), FillRule.EVEN_ODD).region();
		assertEquals(2, region.pieces().size());
		assertEquals(100 - 36 + 4, region.area(), 1e-9);
		assertEquals(1, region.pieces().get(0).holes().size());
	}

	@Test
	void neighboursWithACommonSideBecomeOne() {
		Region region = region(Shapes.rectangle(0, 0, 5, 5), Shapes.rectangle(5, 0, 5, 5));
		assertEquals(1, region.contours().size());
		assertEquals(50, region.area(), 1e-9);
	}

	@Test
	void partlySharedSidesBecomeOne() {
		Region region = region(Shapes.rectangle(0, 0, 5, 5), Shapes.rectangle(5, 2, 5, 5).reversed().reversed());
		assertEquals(1, region.contours().size());
		assertEquals(50, region.area(), 1e-9);
	}

	@Test
	void squaresThatTouchInACornerAreDrawnApart() {
		CleanResult result = clean(Outline.of(Shapes.rectangle(0, 0, 5, 5), Shapes.rectangle(5, 5, 5, 5)),
				FillRule.NON_ZERO);
		assertEquals(2, result.region().pieces().size());
		assertEquals(50, result.region().area(), TOLERANCE * result.region().perimeter());
		assertTrue(has(result, Kind.TOUCH_PARTED));
	}

	@Test
	void circlesThatTouchFromInsideAreDrawnApart() {
		Region region = clean(Outline.of(Shapes.circle(0, 0, 5), Shapes.circle(2, 0, 3)), FillRule.EVEN_ODD).region();
		assertEquals(Math.PI * 16, region.area(), TOLERANCE * region.perimeter());
	}

	@Test
	void shapesThatAllButTouchBecomeOneAndStayCurves() {
		for (double gap : new double[] { 1e-5, 1e-4, 3e-4 }) {
			CleanResult result = clean(
					Outline.of(Shapes.circle(0, 0, 10), Shapes.circle(20 + gap, 0, 10)), FillRule.NON_ZERO);
			assertTrue(result.region().nodeCount() <= 14, result.region().toString());
			assertEquals(2 * Math.PI * 100, result.region().area(), 0.3);
		}
	}

	@Test
	void loopOfASingleCubicIsResolved() {
		Cubic loop = new Cubic(new Point(0, 0), new Point(30, 20), new Point(-20, 20), new Point(10, 0));
		Region region = region(Contour.closed(List.of(loop, new Line(new Point(10, 0), new Point(0, 0)))));
		assertEquals(2, region.pieces().size());
	}

	@Test
	void shortSegmentsGoAndLeaveTheShape() {
		List<Point> corners = new ArrayList<>();
		int count = 5000;
		for (int i = 0; i < count; i++) {
			double angle = 2 * Math.PI * i / count;
			corners.add(new Point(10 * Math.cos(angle), 10 * Math.sin(angle)));
		}
		CleanResult result = clean(Outline.of(Contour.polygon(corners)), FillRule.NON_ZERO);
		assertTrue(has(result, Kind.SHORT_SEGMENT_REMOVED));
		assertEquals(Math.PI * 100, result.region().area(), 0.02);
		assertTrue(result.region().nodeCount() > 1500 && result.region().nodeCount() < 3200);
	}

	@Test
	void hookAlongTheNeighbourGoes() {
		Outline outline = PathData.parse("M0 0C.015 0-3 .2-5 1V5H5V1C3 .2 1 0 0 0Z");
		CleanResult result = clean(outline, FillRule.NON_ZERO);
		assertTrue(has(result, Kind.SHORT_SEGMENT_REMOVED));
		assertEquals(6, result.region().nodeCount() + 1);
		assertEquals(ScannedArea.of(outline, FillRule.NON_ZERO), result.region().area(), 0.2);
	}

	@Test
	void specksAndHairlinesAreDropped() {
		CleanResult result = clean(Outline.of(Shapes.rectangle(0, 0, 10, 10), Shapes.rectangle(20, 0, 0.01, 0.01),
				Shapes.rectangle(30, 0, 0.005, 10)), FillRule.NON_ZERO);
		assertEquals(1, result.region().pieces().size());
		assertTrue(has(result, Kind.SPECK_REMOVED));
	}

	@Test
	void circlesDrawnFromDifferentNodesAreOneCircle() {
		Contour circle = Shapes.circle(0, 0, 5);
		for (double turn = 0.1; turn < 1.5; turn += 0.2) {
			Region region = region(circle, circle.transformed(Transform.rotation(turn)));
			assertEquals(1, region.contours().size());
			assertEquals(Math.PI * 25, region.area(), TOLERANCE * 32);
		}
	}

	@Test
	void emptyAndDegenerateOutlinesGiveNothing() {
		assertTrue(region().isEmpty());
		Point place = new Point(3, 3);
		assertTrue(region(Contour.closed(List.of(new Line(place, place)))).isEmpty());
		Point far = new Point(9, 3);
		assertTrue(region(Contour.closed(List.of(new Line(place, far), new Line(far, place)))).isEmpty());
	}

	@Test
	void notFiniteCoordinatesAreRefused() {
		Contour contour = Contour.polygon(List.of(new Point(0, 0), new Point(Double.POSITIVE_INFINITY, 0),
				new Point(0, 1)));
		assertThrows(IllegalArgumentException.class, () -> region(contour));
	}

	@Test
	void cancelStopsTheWork() {
		Outline outline = Outline.of(Shapes.circle(0, 0, 5), Shapes.circle(3, 0, 5));
		assertThrows(CancellationException.class, () -> new OutlineCleaner().clean(outline, FillRule.NON_ZERO,
				Tolerance.DEFAULT, () -> true));
	}

	@Test
	void sameInputGivesTheSameBits() {
		Outline outline = Outline.of(Shapes.circle(0, 0, 5), Shapes.circle(3, 1, 5), Shapes.pentagram(),
				Shapes.rectangle(-8, -2, 30, 2));
		assertEquals(clean(outline, FillRule.EVEN_ODD), clean(outline, FillRule.EVEN_ODD));
		assertFalse(clean(outline, FillRule.EVEN_ODD).region().isEmpty());
	}

	/** Crossing contours make one cluster, which is worked on in one go. */
	@Test
	void monitorIsAskedTheMoreOftenTheMoreContoursCross() {
		int before = 0;
		for (int count : new int[] { 4, 16, 64 }) {
			List<Contour> combs = new ArrayList<>();
			for (int i = 0; i < count; i++) {
				combs.add(Contour.polygon(List.of(new Point(10 * i, 0), new Point(10 * i, 8), new Point(10 * i + 5, 8),
						new Point(10 * i + 5, 0))));
			}
			combs.add(Contour.polygon(List.of(new Point(-1, 2), new Point(-1, 4), new Point(10 * count, 4),
					new Point(10 * count, 2))));
			int[] asked = new int[1];
			CleanResult result = new OutlineCleaner().clean(new Outline(combs), FillRule.NON_ZERO, new Tolerance(TOLERANCE),
					() -> ++asked[0] < 0);
			assertEquals(1, result.region().pieces().size());
			assertTrue(asked[0] > before && asked[0] >= result.region().nodeCount() / 32,
					asked[0] + " polls for " + result.region().nodeCount() + " segments");
			before = asked[0];
		}
	}
}
