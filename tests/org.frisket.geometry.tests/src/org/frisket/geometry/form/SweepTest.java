package org.frisket.geometry.form;

import static org.frisket.geometry.form.Regions.FINE;
import static org.frisket.geometry.form.Regions.TOLERANCE;
import static org.frisket.geometry.form.Regions.assertLike;
import static org.frisket.geometry.form.Regions.polygons;
import static org.frisket.geometry.form.Regions.random;
import static org.frisket.geometry.form.Regions.region;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Letters;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.clean.RegionAssert;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

class SweepTest {

	@Test
	void sweptConvexShapesGrowByTheirWidthTimesTheWay() {
		Region square = region(Shapes.rectangle(0, 0, 10, 10));
		assertEquals(100 + 10 * 7, Sweep.of(square, new Point(7, 0), TOLERANCE, Monitor.NONE).area(), 1e-9);
		assertEquals(100 + 10 * 3 + 10 * 4, Sweep.of(square, new Point(3, -4), TOLERANCE, Monitor.NONE).area(), 1e-9);
		Region disc = region(Shapes.circle(0, 0, 5));
		for (int i = 0; i < 12; i++) {
			Point way = new Point(Math.cos(i), Math.sin(i)).times(8);
			Region swept = Sweep.of(disc, way, TOLERANCE, Monitor.NONE);
			assertEquals(Math.PI * 25 + 10 * 8, swept.area(), 0.05, "way " + way);
			RegionAssert.assertClean(swept, TOLERANCE.mm(), "way " + way);
		}
		Region triangle = region("M0 0L3 8L9 2Z");
		Region swept = Sweep.of(triangle, new Point(-5, 2), TOLERANCE, Monitor.NONE);
		assertEquals(Polygons.of(triangle, FINE).getArea() + width(triangle, new Point(-5, 2)), swept.area(), 1e-9);
		assertEquals(square, Sweep.of(square, Point.ORIGIN, TOLERANCE, Monitor.NONE));
	}

	/** Across the way, times the length of the way. */
	private static double width(Region region, Point way) {
		double[] across = region.contours().stream().flatMap(c -> c.segments().stream())
				.mapToDouble(s -> s.start().cross(way)).toArray();
		return java.util.Arrays.stream(across).max().orElseThrow() - java.util.Arrays.stream(across).min().orElseThrow();
	}

	/** Every edge of the flattened region drawn out to a parallelogram, united by JTS with both ends. */
	private static Geometry swept(Region region, Point way) {
		List<Geometry> all = new ArrayList<>();
		all.add(polygons(region));
		all.add(polygons(region.transformed(Transform.translation(way.x(), way.y()))));
		for (Contour contour : region.contours()) {
			List<Point> ring = contour.flattened(FINE);
			for (int i = 0; i < ring.size(); i++) {
				Point a = ring.get(i);
				Point b = ring.get((i + 1) % ring.size());
				if (Math.abs(b.minus(a).cross(way)) > 1e-12) {
					all.add(Polygons.factory().createPolygon(new Coordinate[] { at(a), at(b), at(b.plus(way)),
							at(a.plus(way)), at(a) }));
				}
			}
		}
		return OverlayNGRobust.union(all);
	}

	private static Coordinate at(Point point) {
		return new Coordinate(point.x(), point.y());
	}

	@Test
	void sweepsOfRandomShapesAreTheUnionOfAllTheyPass() {
		Random random = new Random(107);
		for (int i = 0; i < 150; i++) {
			Region region = random(random);
			Point way = new Point(20 * random.nextDouble() - 10, i % 5 == 0 ? 0 : 20 * random.nextDouble() - 10);
			assertLike(swept(region, way), Sweep.of(region, way, TOLERANCE, Monitor.NONE), "number " + i + " by " + way);
		}
	}

	@Test
	void sweptLettersKeepTheirCurves() throws Exception {
		assumeTrue(Letters.SERIF.exists(), "no font");
		Region word = new OutlineCleaner().clean(Letters.word(Letters.SERIF, "Ferry & 83", 30, 0), FillRule.NON_ZERO,
				TOLERANCE, Monitor.NONE).region();
		Point way = new Point(3, 4);
		Region swept = Sweep.of(word, way, TOLERANCE, Monitor.NONE);
		assertLike(swept(word, way), swept, "word");
		assertTrue(swept.nodeCount() < 2 * word.nodeCount(), swept.nodeCount() + " of " + word.nodeCount());
	}
}
