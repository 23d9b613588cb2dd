package org.frisket.geometry.internal.repair;

import static org.frisket.geometry.internal.repair.Courses.TOLERANCE;
import static org.frisket.geometry.internal.repair.Courses.area;
import static org.frisket.geometry.internal.repair.Courses.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.offset.PolygonOffset;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Mended;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/** Gaps narrower than a width go; nothing else does. */
class NarrowGapsTest {

	private static Mended healed(Artwork artwork, String gap) {
		return step(new NarrowGaps(), artwork, Map.of("gap", gap));
	}

	@Test
	void nothingIsFilledUnlessAskedFor() {
		Artwork gap = Courses.area("M0 0V10H10V0Z M10.1 0V10H20V0Z");
		assertEquals(gap, step(new NarrowGaps(), gap).artwork());
		assertEquals(gap, healed(gap, "0.09mm").artwork(), "as wide as that is wide enough");
	}

	@Test
	void aGapBetweenTwoAreasIsFilled() {
		Mended mended = healed(Courses.area("M0 0V10H10V0Z M10.1 0V10H20V0Z"), "0.2mm");
		assertEquals(1, mended.artwork().areas().get(0).outline().contours().size());
		assertEquals(200, area(mended.artwork()), 0.02);
		assertEquals("gap-healed", mended.mends().get(0).kind());
		assertEquals(0.1, mended.mends().get(0).amount(), 0.01);
		assertEquals(10.05, mended.mends().get(0).place().x(), 0.02);
		assertEquals(1, mended.brought().size());
	}

	@Test
	void aSlotAndASlitWithinAnAreaAreFilledAndCornersStay() {
		Mended mended = healed(Courses.area("M0 0V10H4.95V3H5.05V10H10V0Z M2 2H8V2.1H2Z M20 0V5H22V3L24 5V0Z"), "0.2mm");
		assertEquals(2, mended.mends().size(), mended.mends().toString());
		assertEquals(100 + 18, area(mended.artwork()), 0.02);
		Set<Segment> segments = new HashSet<>(mended.artwork().areas().get(0).outline().contours().stream()
				.flatMap(c -> c.segments().stream()).toList());
		Courses.area("M20 0V5H22V3L24 5V0Z").toOutline().contours().get(0).segments()
				.forEach(side -> assertTrue(segments.contains(side), side + " of the notched one is as it was"));
	}

	@Test
	void aRingLetsItsIslandGo() {
		Artwork ring = new Artwork(List.of(new Artwork.Area(new Outline(List.of(Shapes.circle(0, 0, 10),
				Shapes.circle(0, 0, 5.06).reversed(), Shapes.circle(0, 0, 5))), FillRule.NON_ZERO)), List.of());
		Mended mended = healed(ring, "0.1mm");
		assertEquals(1, mended.artwork().areas().get(0).outline().contours().size());
		assertEquals(-Shapes.circle(0, 0, 10).signedArea(), area(mended.artwork()), 0.05);
	}

	/** Grown by half the width and shrunk again, as the library JTS does it, says where gaps are. */
	@Test
	void afterwardsThereAreNoGapsAndAwayFromThemNothingHasMoved() {
		Random random = new Random(51);
		int healed = 0;
		for (int i = 0; i < 80; i++) {
			double width = 0.05 + random.nextDouble() * 0.5;
			Artwork source = neighbours(random, width);
			Mended mended = healed(source, width + "mm");
			healed += mended.mends().size();
			String name = "number " + i;
			Geometry before = polygons(source);
			Geometry after = polygons(mended.artwork());
			double most = TOLERANCE.mm() + 2e-3;
			assertTrue(before.difference(after.buffer(most)).isEmpty(), name + ": nothing is taken away");
			Geometry more = after.difference(before.buffer(most));
			Geometry closed = PolygonOffset.round(PolygonOffset.round(before, 0.6 * width, 1e-3), -0.6 * width, 1e-3);
			assertTrue(more.difference(closed.buffer(most)).isEmpty(), name + ": only gaps are filled");
			assertTrue(mended.artwork().equals(healed(mended.artwork(), width + "mm").artwork()), name + ": not done at once");
		}
		assertTrue(healed > 80, "gaps there were: " + healed);
	}

	private static Geometry polygons(Artwork artwork) {
		Region region = UnitedAreas.region(artwork.areas(), TOLERANCE.share(0.01), Monitor.NONE, new ArrayList<>());
		return Polygons.of(region, 1e-3);
	}

	private static Artwork neighbours(Random random, double width) {
		List<Contour> contours = new ArrayList<>();
		double x = 0;
		for (int i = 0; i < 4; i++) {
			double size = 2 + 3 * random.nextDouble();
			contours.add(random.nextBoolean() ? Shapes.rectangle(x, random.nextDouble(), size, 4)
					: Shapes.circle(x + size / 2, 2, size / 2));
			if (random.nextInt(3) == 0) {
				double slit = width * (0.2 + 1.3 * random.nextDouble());
				contours.add(Shapes.rectangle(x + size / 3, 1.9, size / 3, slit).reversed());
			}
			x += size + width * (0.1 + 1.5 * random.nextDouble());
		}
		Transform turn = Transform.rotation(random.nextInt(3) * 0.3);
		return new Artwork(List.of(new Artwork.Area(new Outline(contours).transformed(turn), FillRule.NON_ZERO)),
				List.of());
	}
}
