package org.frisket.typography.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.typography.Alignment;
import org.frisket.typography.FontFace;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.layout.Arc.Direction;
import org.frisket.typography.layout.Arc.Side;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ArcLayoutTest {

	private static final Setting TEN = Setting.ofCapHeight(10);
	private static FontFace face;

	@BeforeAll
	static void openFont() throws Exception {
		face = new FontLibrary(List.of(new EmbeddedFontSource())).find("Liberation Sans");
	}

	private static SetText set(String text, Alignment alignment) {
		return TextSetter.set(text, face, TEN.withAlignment(alignment), Monitor.NONE);
	}

	/** From the middle of the circle, of all corners and joints. */
	private static double[] reach(Outline outline) {
		double least = Double.POSITIVE_INFINITY;
		double most = 0;
		for (Contour contour : outline.contours()) {
			for (Point p : contour.flattened(0.001)) {
				least = Math.min(least, p.length());
				most = Math.max(most, p.length());
			}
		}
		return new double[] { least, most };
	}

	private static double area(Outline outline) {
		return outline.contours().stream().mapToDouble(Contour::signedArea).sum();
	}

	@Test
	void pensStandOnTheBaselineAtTheirArcLength() {
		SetText straight = set("Harbour Lane", Alignment.LEFT);
		Laid laid = ArcLayout.along(straight, new Arc(80, Direction.CLOCKWISE, Side.OUTSIDE, 30));
		for (int i = 0; i < straight.letters().size(); i++) {
			Letter before = straight.letters().get(i);
			Letter after = laid.text().letters().get(i);
			double angle = Math.toRadians(30) + (before.origin().x() + before.advance() / 2) / 80;
			// half an advance back along the tangent
			double half = before.advance() / 2;
			assertEquals(80 * Math.sin(angle) - half * Math.cos(angle), after.origin().x(), 1e-9);
			assertEquals(-80 * Math.cos(angle) - half * Math.sin(angle), after.origin().y(), 1e-9);
		}
		assertEquals(List.of(), laid.overflowing());
		assertEquals(straight.lines().get(0).width(), laid.needed());
		assertEquals(2 * Math.PI * 80, laid.available(), 1e-9);
	}

	@Test
	void lettersStayRigid() {
		SetText straight = set("Ferry", Alignment.CENTRE);
		Laid laid = ArcLayout.along(straight, Arc.over(25));
		for (int i = 0; i < 5; i++) {
			Outline before = straight.letters().get(i).outline();
			Outline after = laid.text().letters().get(i).outline();
			assertEquals(area(before), area(after), 1e-9);
			assertEquals(before.contours().get(0).length(), after.contours().get(0).length(), 1e-9);
		}
	}

	@Test
	void fourWaysToStandOnACircle() {
		SetText straight = set("H", Alignment.CENTRE);
		for (Direction direction : Direction.values()) {
			for (Side side : Side.values()) {
				Laid laid = ArcLayout.along(straight, new Arc(100, direction, side, 0));
				double[] reach = reach(laid.text().outline());
				assertEquals(side == Side.OUTSIDE ? 100 : 90, reach[0], 0.2, direction + " " + side);
				assertEquals(side == Side.OUTSIDE ? 110 : 100, reach[1], 0.2, direction + " " + side);
				Point foot = laid.text().letters().get(0).origin();
				boolean headsOut = foot.length() < 105 && side == Side.OUTSIDE || foot.length() < 95;
				assertEquals(direction == Direction.CLOCKWISE, headsOut, direction + " " + side);
			}
		}
	}

	@Test
	void readsFromLeftToRightAtTheTopAndAtTheBottom() {
		SetText straight = set("HARBOUR", Alignment.CENTRE);
		List<Letter> over = ArcLayout.along(straight, Arc.over(60)).text().letters();
		List<Letter> within = ArcLayout.along(straight, Arc.within(60)).text().letters();
		for (int i = 1; i < over.size(); i++) {
			assertTrue(over.get(i).outline().bounds().centre().x() > over.get(i - 1).outline().bounds().centre().x());
			assertTrue(
					within.get(i).outline().bounds().centre().x() > within.get(i - 1).outline().bounds().centre().x());
		}
		Bounds top = over.get(3).outline().bounds();
		Bounds bottom = within.get(3).outline().bounds();
		assertTrue(top.maxY() < -59 && bottom.maxY() > 59 && bottom.minY() < 51, "upright in both places");
	}

	@Test
	void alignmentIsAboutTheStartAngle() {
		double width = set("HH", Alignment.LEFT).lines().get(0).width();
		for (Alignment alignment : List.of(Alignment.LEFT, Alignment.CENTRE, Alignment.RIGHT)) {
			Bounds bounds = ArcLayout.along(set("HH", alignment), Arc.over(1000)).text().bounds();
			double share = alignment == Alignment.LEFT ? 0.5 : alignment == Alignment.CENTRE ? 0 : -0.5;
			assertEquals(share * width, bounds.centre().x(), 0.1);
		}
	}

	@Test
	void furtherLinesStandBelowAsRead() {
		for (Direction direction : Direction.values()) {
			Side side = direction == Direction.CLOCKWISE ? Side.OUTSIDE : Side.INSIDE;
			Laid laid = ArcLayout.along(set("H\nH", Alignment.CENTRE), new Arc(100, direction, side, 0));
			double second = direction == Direction.CLOCKWISE ? 84 : 116;
			double half = laid.text().letters().get(1).advance() / 2;
			assertEquals(Math.hypot(second, half), laid.text().letters().get(1).origin().length(), 1e-9);
		}
	}

	@Test
	void tooLongALineOverflowsWhereItsOwnStartComesRound() {
		SetText straight = set("HHHHHHHHHH", Alignment.LEFT);
		double width = straight.lines().get(0).width();
		Laid just = ArcLayout.along(straight, Arc.over(width / (2 * Math.PI)));
		assertEquals(List.of(), just.overflowing());
		Laid tooLong = ArcLayout.along(straight, Arc.over(0.85 * width / (2 * Math.PI)));
		assertEquals(List.of(8, 9), tooLong.overflowing());
		assertTrue(tooLong.needed() > tooLong.available());
	}

	@Test
	void circlesWithoutRoomAreRefused() {
		assertThrows(IllegalArgumentException.class, () -> Arc.over(0));
		assertThrows(IllegalArgumentException.class, () -> new Arc(10, Direction.CLOCKWISE, Side.INSIDE, Double.NaN));
		SetText lines = set("A\nB\nC", Alignment.CENTRE);
		assertThrows(IllegalArgumentException.class, () -> ArcLayout.along(lines, Arc.over(20)));
		assertThrows(IllegalArgumentException.class,
				() -> ArcLayout.along(lines, new Arc(9, Direction.CLOCKWISE, Side.INSIDE, 0)));
	}
}
