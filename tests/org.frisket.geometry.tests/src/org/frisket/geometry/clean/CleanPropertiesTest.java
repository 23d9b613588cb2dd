package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.Repair.Kind;
import org.junit.jupiter.api.Test;

/** Random outlines, among them the most awkward ones, with fixed seeds. */
class CleanPropertiesTest {

	private static final double TOLERANCE = 0.02;

	/** Valid, of the right area, and left alone when cleaned again. */
	private static void check(int count, long seed, Function<Random, Outline> kind) {
		Random random = new Random(seed);
		for (int i = 0; i < count; i++) {
			Outline outline = kind.apply(random);
			FillRule rule = random.nextBoolean() ? FillRule.NON_ZERO : FillRule.EVEN_ODD;
			String name = "seed " + seed + " number " + i + " " + rule;
			Region region = clean(outline, rule);
			RegionAssert.assertClean(region, TOLERANCE, name);
			double perimeter = outline.contours().stream().mapToDouble(Contour::length).sum();
			assertEquals(ScannedArea.of(outline, rule), region.area(), TOLERANCE * perimeter, name);
			assertTrue(region.equals(clean(region.toOutline(), FillRule.NON_ZERO)), name + ": cleaned twice");
		}
	}

	private static Region clean(Outline outline, FillRule rule) {
		return new OutlineCleaner().clean(outline, rule, new Tolerance(TOLERANCE), Monitor.NONE).region();
	}

	private static Outline blobs(Random random, int most) {
		List<Contour> contours = new ArrayList<>();
		int count = 1 + random.nextInt(most);
		for (int i = 0; i < count; i++) {
			contours.add(Shapes.blob(random, 3 + random.nextInt(4), Shapes.point(random, 20),
					3 + random.nextDouble() * 5));
		}
		return new Outline(contours);
	}

	@Test
	void crossingPolygons() {
		check(150, 11, r -> Outline.of(Shapes.polygon(r, 3 + r.nextInt(20), 20)));
	}

	@Test
	void latticePolygonsFullOfTouchesAndSharedLines() {
		check(200, 12, r -> Outline.of(Shapes.latticePolygon(r, 3 + r.nextInt(16), 9)));
	}

	@Test
	void polygonsHardlyLargerThanTheTolerance() {
		check(150, 13, r -> Outline.of(Shapes.polygon(r, 3 + r.nextInt(8), 0.5)));
	}

	@Test
	void denseTangles() {
		check(3, 14, r -> Outline.of(Shapes.polygon(r, 60, 4)));
	}

	@Test
	void scribblesOfCubics() {
		check(150, 15, r -> Outline.of(Shapes.scribble(r, 1 + r.nextInt(6), 20)));
	}

	@Test
	void overlappingBlobs() {
		check(150, 16, r -> blobs(r, 5));
	}

	@Test
	void overlappingRectanglesOnAGrid() {
		check(150, 17, r -> {
			List<Contour> contours = new ArrayList<>();
			for (int i = 2 + r.nextInt(7); i > 0; i--) {
				Contour c = Shapes.rectangle(r.nextInt(6), r.nextInt(6), 1 + r.nextInt(4), 1 + r.nextInt(4));
				contours.add(r.nextBoolean() ? c : c.reversed());
			}
			return new Outline(contours);
		});
	}

	@Test
	void touchingCircles() {
		check(80, 18, r -> {
			List<Contour> contours = new ArrayList<>();
			for (int i = 2 + r.nextInt(4); i > 0; i--) {
				contours.add(Shapes.circle(0, 0, 1 + r.nextInt(3))
						.transformed(Transform.rotation(r.nextInt(12) * Math.PI / 6))
						.transformed(Transform.translation(r.nextInt(6), r.nextInt(6))));
			}
			return new Outline(contours);
		});
	}

	@Test
	void nearDuplicatesFromATenthDownToABillionth() {
		check(150, 19, r -> {
			Contour blob = Shapes.blob(r, 3 + r.nextInt(4), Shapes.point(r, 5), 8);
			double step = Math.pow(10, -1 - r.nextInt(9));
			Transform shift = r.nextBoolean()
					? Transform.translation(step * r.nextGaussian(), step * r.nextGaussian())
					: Transform.rotation(step * r.nextGaussian());
			Contour other = blob.transformed(shift);
			return Outline.of(blob, r.nextBoolean() ? other : other.reversed());
		});
	}

	@Test
	void placesAKilometreAway() {
		check(80, 20, r -> {
			double far = r.nextBoolean() ? 1e6 : -1e6;
			Outline outline = r.nextBoolean() ? blobs(r, 4) : Outline.of(Shapes.polygon(r, 12, 20));
			return outline.transformed(Transform.translation(far, -far));
		});
	}

	@Test
	void unionDoesNotCareAboutTheOrder() {
		Random random = new Random(21);
		for (int i = 0; i < 100; i++) {
			Region one = clean(blobs(random, 3), FillRule.NON_ZERO);
			Region other = clean(blobs(random, 3), FillRule.NON_ZERO);
			Region there = union(one, other);
			Region back = union(other, one);
			assertEquals(there.area(), back.area(), TOLERANCE * there.perimeter() / 100);
			assertEquals(there.pieces().size(), back.pieces().size());
		}
	}

	private static Region union(Region one, Region other) {
		return new RegionBoolean().union(List.of(one, other), new Tolerance(TOLERANCE), Monitor.NONE);
	}

	@Test
	void booleanAreasAddUp() {
		Random random = new Random(22);
		RegionBoolean op = new RegionBoolean();
		Tolerance tolerance = new Tolerance(TOLERANCE);
		for (int i = 0; i < 60; i++) {
			Region a = clean(blobs(random, 3), FillRule.NON_ZERO);
			Region b = clean(blobs(random, 3), FillRule.NON_ZERO);
			Region both = op.intersect(a, b, tolerance, Monitor.NONE);
			Region onlyA = op.subtract(a, b, tolerance, Monitor.NONE);
			Region onlyB = op.subtract(b, a, tolerance, Monitor.NONE);
			Region either = op.xor(a, b, tolerance, Monitor.NONE);
			Region all = union(a, b);
			for (Region region : List.of(both, onlyA, onlyB, either, all)) {
				RegionAssert.assertClean(region, TOLERANCE, "number " + i);
			}
			double slack = TOLERANCE * (a.perimeter() + b.perimeter()) / 10;
			assertEquals(a.area(), both.area() + onlyA.area(), slack);
			assertEquals(b.area(), both.area() + onlyB.area(), slack);
			assertEquals(either.area(), onlyA.area() + onlyB.area(), slack);
			assertEquals(all.area(), a.area() + onlyB.area(), slack);
		}
	}

	/** Each course through a crossing may add one node to those that came in. */
	@Test
	void nodesDoNotMultiply() {
		Random random = new Random(23);
		for (int i = 0; i < 100; i++) {
			Outline outline = blobs(random, 5);
			CleanResult result = new OutlineCleaner().clean(outline, FillRule.NON_ZERO, new Tolerance(TOLERANCE),
					Monitor.NONE);
			long crossings = result.repairs().stream()
					.filter(r -> r.kind() == Kind.CROSSING_RESOLVED || r.kind() == Kind.TOUCH_PARTED).count();
			assertTrue(result.region().nodeCount() <= outline.nodeCount() + crossings, "number " + i);
		}
	}
}
