package org.frisket.geometry.form;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.clean.RegionAssert;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Regions for tests, and what is asked of results. */
final class Regions {

	static final Tolerance TOLERANCE = Tolerance.DEFAULT;
	static final double FINE = TOLERANCE.mm() / 20;

	private Regions() {
	}

	static Region region(Contour... contours) {
		return new OutlineCleaner().clean(Outline.of(contours), FillRule.NON_ZERO, TOLERANCE, Monitor.NONE).region();
	}

	static Region region(String pathData) {
		return region(PathData.parse(pathData).contours().toArray(Contour[]::new));
	}

	static Region random(Random random) {
		return switch (random.nextInt(3)) {
		case 0 -> region(Shapes.rectangle(0, 0, 2 + random.nextInt(9), 2 + random.nextInt(9)));
		case 1 -> region(Shapes.blob(random, 3 + random.nextInt(4), new Point(5, 5), 8),
				Shapes.circle(20 * random.nextDouble(), 20 * random.nextDouble(), 3));
		default -> region(Shapes.scribble(random, 3, 20));
		};
	}

	static Geometry polygons(Region region) {
		return Polygons.of(region, FINE);
	}

	static void assertLike(Geometry expected, Region region, String name) {
		RegionAssert.assertClean(region, TOLERANCE.mm(), name);
		double off = OverlayNGRobust.overlay(expected, polygons(region), OverlayNG.SYMDIFFERENCE).getArea();
		assertTrue(off <= TOLERANCE.mm() * expected.getLength(), name + ": off by " + off + " mm²");
	}

	static void assertWithin(Region inner, Region outer, String name) {
		double out = OverlayNGRobust.overlay(polygons(inner), polygons(outer), OverlayNG.DIFFERENCE).getArea();
		assertTrue(out <= TOLERANCE.mm() * inner.perimeter(), name + ": " + out + " mm² outside");
	}
}
