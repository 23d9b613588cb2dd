package org.frisket.geometry.internal.repair;

import static org.frisket.geometry.internal.repair.Courses.TOLERANCE;
import static org.frisket.geometry.internal.repair.Courses.lines;
import static org.frisket.geometry.internal.repair.Courses.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Mended;
import org.junit.jupiter.api.Test;

/** Lines that are nearly level or plumb come to be so. */
class LevelLinesTest {

	private static Artwork levelled(Artwork artwork, String level) {
		return step(new LevelLines(), artwork, Map.of("level", level)).artwork();
	}

	@Test
	void aCardComesToStandSquare() {
		Mended mended = step(new LevelLines(), Courses.area("M0 0.0078125L0.0078125 50L85 50.0078125L85.0078125 0Z"),
				Map.of("level", "0.02mm"));
		Artwork square = Courses.area("M0.00390625 0.00390625V50.00390625H85.00390625V0.00390625Z");
		assertEquals(square.areas().get(0).outline(), mended.artwork().areas().get(0).outline());
		assertEquals("lines-levelled", mended.mends().get(0).kind());
		assertEquals(Math.hypot(0.00390625, 0.00390625), mended.mends().get(0).amount(), 1e-9);
		assertEquals(List.of(), step(new LevelLines(), mended.artwork(), Map.of("level", "0.02mm")).mends());
	}

	@Test
	void nothingIsPutStraightUnlessAskedFor() {
		Artwork card = Courses.area("M0 0.01L0.01 50L85 50.01L85.01 0Z");
		assertEquals(card, step(new LevelLines(), card).artwork());
		assertEquals(card, levelled(card, "0.009mm"));
	}

	@Test
	void neighboursShareOneLineOrStay() {
		assertEquals(lines("M0 0.0075H10H20V5"), levelled(lines("M0 0L10 0.01L20 0.015V5"), "0.02mm"));
		Artwork slope = lines("M0 0L10 0.01L20 0.02L30 0.03L40 0.04");
		assertEquals(slope, levelled(slope, "0.02mm"), "together they stand too far off");
		Artwork steep = lines("M0 0L0.05 0.01M9 9L9.01 9.05");
		assertEquals(steep, levelled(steep, "0.02mm"), "short and slanted");
	}

	@Test
	void aCurveFollowsItsLine() {
		List<Segment> segments = levelled(lines("M0 0L10 0.01C15 0.01 20 5 20 10"), "0.02mm").lines().get(0).segments();
		assertEquals(List.of(new Point(0, 0.005), new Point(10, 0.005)),
				List.of(segments.get(0).start(), segments.get(1).start()));
		assertEquals(0, segments.get(1).startTangent().y(), 1e-12);
	}

	@Test
	void contoursCloseAndNothingMovesFurtherThanTheTolerance() {
		Random random = new Random(52);
		int straight = 0;
		for (int i = 0; i < 500; i++) {
			Contour contour = stairs(random);
			boolean area = random.nextBoolean();
			Artwork source = area ? new Artwork(List.of(new Artwork.Area(Outline.of(contour), FillRule.NON_ZERO)), List.of())
					: new Artwork(List.of(), List.of(contour));
			String name = "number " + i;
			Artwork level = levelled(source, "0.05mm");
			Contour found = level.toOutline().contours().get(0);
			assertTrue(found.isClosed(), name);
			if (!area) {
				for (int k = 0; k < contour.segments().size(); k++) {
					double moved = found.segments().get(k).start().distance(contour.segments().get(k).start());
					assertTrue(moved <= TOLERANCE.mm(), name + " moved by " + moved);
				}
			}
			straight += found.segments().stream().filter(s -> s instanceof Line && (s.start().x() == s.end().x()
					|| s.start().y() == s.end().y())).count();
			assertEquals(level, levelled(level, "0.05mm"), name + ": done at once");
		}
		assertTrue(straight > 3000, "lines put straight: " + straight);
	}

	private static Contour stairs(Random random) {
		List<Point> corners = new ArrayList<>();
		int steps = 2 + random.nextInt(5);
		for (int i = 0; i <= steps; i++) {
			corners.add(off(random, 3 * i, 2 * i));
			corners.add(off(random, 3 * i, 2 * i + 2));
		}
		corners.add(off(random, 3 * steps + 2, 2 * steps + 2));
		corners.add(off(random, 3 * steps + 2, 0));
		return Contour.polygon(corners);
	}

	private static Point off(Random random, double x, double y) {
		return new Point(x + random.nextGaussian() * 0.006, y + random.nextGaussian() * 0.006);
	}
}
