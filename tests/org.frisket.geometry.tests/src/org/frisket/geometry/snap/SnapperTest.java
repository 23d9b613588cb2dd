package org.frisket.geometry.snap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

class SnapperTest {

	private static final Bounds BOX = new Bounds(10, 20, 30, 60);
	private static final double REACH = 1;

	private static Snapper.Builder targets() {
		return new Snapper.Builder();
	}

	private static SnapKind kindX(SnapResult held) {
		return held.x().orElseThrow().kind();
	}

	private static SnapKind kindY(SnapResult held) {
		return held.y().orElseThrow().kind();
	}

	@Test
	void nothingHoldsWhereNothingIs() {
		assertEquals(SnapResult.NONE, Snapper.NONE.snap(BOX, REACH));
		assertEquals(SnapResult.NONE, Snapper.NONE.snap(new Point(1, 2), REACH));
		assertFalse(SnapResult.NONE.isHeld());
		assertEquals(0, SnapResult.NONE.dx());
		assertEquals(0, SnapResult.NONE.dy());
	}

	@Test
	void guideHoldsTheLeftEdge() {
		SnapResult held = targets().guide(false, 9.25).build().snap(BOX, REACH);
		assertEquals(-0.75, held.dx());
		assertEquals(SnapKind.GUIDE, kindX(held));
		assertEquals(Optional.empty(), held.y());
		assertEquals(new Bounds(9.25, 20, 29.25, 60), held.applied(BOX));
	}

	@Test
	void guideHoldsTheMiddleAndTheRightEdge() {
		assertEquals(0.5, targets().guide(false, 20.5).build().snap(BOX, REACH).dx());
		assertEquals(-0.5, targets().guide(false, 29.5).build().snap(BOX, REACH).dx());
	}

	@Test
	void guideAcrossHoldsUpAndDownOnly() {
		SnapResult held = targets().guide(true, 20.5).build().snap(BOX, REACH);
		assertEquals(0.5, held.dy());
		assertEquals(Optional.empty(), held.x());
	}

	@Test
	void reachIsTheLastPlaceThatHolds() {
		assertTrue(targets().guide(false, 11).build().snap(BOX, REACH).isHeld());
		assertFalse(targets().guide(false, 11.001).build().snap(BOX, REACH).isHeld());
		assertTrue(targets().guide(false, 9).build().snap(BOX, REACH).isHeld());
		assertFalse(targets().guide(false, 8.999).build().snap(BOX, REACH).isHeld());
	}

	@Test
	void nearestHolds() {
		assertEquals(0.2, targets().guide(false, 10.9).guide(false, 20.2).build().snap(BOX, REACH).dx(), 1e-12);
		assertEquals(-0.3, targets().guide(false, 10.4).guide(false, 9.7).build().snap(BOX, REACH).dx(), 1e-12);
	}

	@Test
	void axesAreHeldByThemselves() {
		SnapResult held = targets().guide(false, 10.5).edges(new Bounds(100, 60.25, 120, 80)).build().snap(BOX, REACH);
		assertEquals(SnapKind.GUIDE, kindX(held));
		assertEquals(SnapKind.EDGE, kindY(held));
		assertEquals(0.25, held.dy());
		assertEquals(Optional.empty(), held.node());
	}

	@Test
	void nearerEdgeComesBeforeFartherGuide() {
		assertEquals(SnapKind.EDGE, kindX(
				targets().guide(false, 10.5).edges(new Bounds(10.25, 100, 50, 110)).build().snap(BOX, REACH)));
	}

	@Test
	void equallyNearOnesComeInTheOrderOfKinds() {
		Bounds other = new Bounds(10.5, 100, 10.5, 110);
		Point edge = new Point(10, 0);
		SnapGrid grid = new SnapGrid(10.5, new Bounds(0, 0, 100, 100));
		assertEquals(SnapKind.GRID, kindX(targets().grid(grid).build().snap(edge, REACH)));
		assertEquals(SnapKind.CENTRE, kindX(targets().grid(grid).centre(other).build().snap(edge, REACH)));
		assertEquals(SnapKind.EDGE, kindX(targets().grid(grid).centre(other).edges(other).build().snap(edge, REACH)));
		assertEquals(SnapKind.NODE, kindX(targets().grid(grid).centre(other).edges(other).node(new Point(10.5, 0))
				.build().snap(edge, REACH)));
		assertEquals(SnapKind.GUIDE, kindX(targets().grid(grid).centre(other).edges(other).node(new Point(10.5, 0))
				.guide(false, 10.5).build().snap(edge, REACH)));
	}

	@Test
	void orderInWhichTargetsAreGivenDoesNotMatter() {
		SnapResult one = targets().guide(false, 9.5).guide(false, 10.5).build().snap(BOX, REACH);
		SnapResult other = targets().guide(false, 10.5).guide(false, 9.5).build().snap(BOX, REACH);
		assertEquals(one, other);
		assertEquals(-0.5, one.dx());
	}

	@Test
	void nodeHoldsACornerOnBothAxes() {
		Point node = new Point(30.3, 60.4);
		SnapResult held = targets().node(node).build().snap(BOX, REACH);
		assertEquals(Optional.of(node), held.node());
		assertEquals(node, held.applied(new Point(30, 60)));
	}

	@Test
	void nodeHoldsNothingThatOnlyLiesInLine() {
		assertFalse(targets().node(new Point(30.3, 90)).build().snap(BOX, REACH).isHeld());
		assertFalse(targets().node(new Point(30.8, 60.8)).build().snap(BOX, REACH).isHeld());
	}

	@Test
	void nodeKeepsBothAxesFromNearerEdgesAndTheGrid() {
		Point node = new Point(10.1, 20.8);
		SnapResult held = targets().node(node).edges(new Bounds(100, 20.2, 110, 120))
				.grid(new SnapGrid(5, new Bounds(0, 0, 100, 100))).build().snap(new Point(10, 20), REACH);
		// the grid is nearest on both axes, and nothing else holds
		assertEquals(SnapKind.GRID, kindX(held));
		held = targets().node(node).edges(new Bounds(100, 20.2, 110, 120)).build().snap(new Point(10, 20), REACH);
		assertEquals(Optional.of(node), held.node());
	}

	@Test
	void guideTakesAnAxisFromANode() {
		SnapResult held = targets().node(new Point(10.1, 20.8)).guide(true, 20.2).build().snap(new Point(10, 20), REACH);
		assertEquals(SnapKind.NODE, kindX(held));
		assertEquals(SnapKind.GUIDE, kindY(held));
		assertEquals(Optional.empty(), held.node());
	}

	@Test
	void nodesOfTheMovedThingAreHeldByNodes() {
		Point own = new Point(17, 33);
		SnapResult held = targets().node(new Point(17.25, 33.25)).build()
				.snap(SnapAnchors.of(BOX).with(List.of(own)), REACH);
		assertEquals(new Point(17.25, 33.25), held.applied(own));
	}

	@Test
	void nearestNodeOfSeveralHolds() {
		SnapResult held = targets().node(new Point(10.6, 20)).node(new Point(10, 20.5)).node(new Point(10.3, 20.3))
				.build().snap(new Point(10, 20), REACH);
		assertEquals(Optional.of(new Point(10.3, 20.3)), held.node());
	}

	@Test
	void gridHoldsWithinTheSheetOnly() {
		Snapper snapper = targets().grid(new SnapGrid(5, new Bounds(0, 0, 50, 40))).build();
		assertEquals(new Point(25, 15), snapper.snap(new Point(25.4, 14.7), REACH)
				.applied(new Point(25.4, 14.7)));
		SnapResult outside = snapper.snap(new Point(55.1, -5.1), REACH);
		assertFalse(outside.isHeld());
		assertTrue(snapper.snap(new Point(50.2, 40.2), REACH).isHeld());
	}

	@Test
	void gridHasALineThroughZeroAndBelow() {
		Snapper snapper = targets().grid(new SnapGrid(2.5, new Bounds(-30, -30, 30, 30))).build();
		assertEquals(-7.5, snapper.snap(new Point(-7.2, 12), REACH).x().orElseThrow().line().at());
		assertEquals(0, snapper.snap(new Point(0.2, 12), REACH).x().orElseThrow().line().at());
	}

	@Test
	void gridNeedsAStepAboveZero() {
		for (double step : new double[] { 0, -1, Double.NaN, Double.POSITIVE_INFINITY }) {
			assertThrows(IllegalArgumentException.class, () -> new SnapGrid(step, BOX));
		}
	}

	@Test
	void emptyBoxesNeitherHoldNorAreHeld() {
		assertFalse(targets().edges(Bounds.EMPTY).centre(Bounds.EMPTY).build().snap(BOX, 1e6).isHeld());
		assertFalse(targets().guide(false, 0).build().snap(Bounds.EMPTY, 1e6).isHeld());
	}

	@Test
	void edgesAtOnePlaceAreOneLineAlongAll() {
		SnapLine line = targets().edges(new Bounds(10.5, 0, 15, 8)).edges(new Bounds(10.5, 70, 18, 90)).build()
				.snap(BOX, REACH).x().orElseThrow().line();
		assertEquals(new SnapLine(10.5, SnapKind.EDGE, 0, 90), line);
	}

	@Test
	void guidesAreEndless() {
		SnapLine line = targets().guide(false, 10).build().snap(BOX, REACH).x().orElseThrow().line();
		assertEquals(SnapLine.endless(10, SnapKind.GUIDE), line);
	}

	@Test
	void oneDirectionAloneIsHeldInThatDirection() {
		Snapper snapper = targets().guide(false, 10.5).guide(true, 20.5).node(new Point(10, 20)).build();
		SnapResult across = snapper.snap(SnapAnchors.of(BOX).acrossOnly(), REACH);
		assertEquals(0.5, across.dx());
		assertEquals(Optional.empty(), across.y());
		SnapResult down = snapper.snap(SnapAnchors.of(BOX).downOnly(), REACH);
		assertEquals(0.5, down.dy());
		assertEquals(Optional.empty(), down.x());
		assertEquals(0.5, snapper.snap(SnapAnchors.vertical(10), REACH).dx());
		assertEquals(0.5, snapper.snap(SnapAnchors.horizontal(20), REACH).dy());
	}

	@Test
	void whatLiesExactlyOnALineIsHeldWithoutMoving() {
		SnapResult held = targets().edges(new Bounds(10, 100, 30, 140)).build().snap(BOX, REACH);
		assertEquals(0, held.dx());
		assertEquals(SnapKind.EDGE, kindX(held));
	}

	@Test
	void roundedSumsCountAsEquallyNear() {
		// 0.1 + 0.2 is not quite 0.3: the guide is farther by a rounding error, and still comes first
		SnapResult held = targets().edges(new Bounds(0.3, 50, 9, 60)).guide(false, 0.1 + 0.2).build()
				.snap(new Point(0, 0), REACH);
		assertEquals(SnapKind.GUIDE, kindX(held));
	}
}
