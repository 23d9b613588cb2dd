package org.frisket.geometry.form;

import static org.frisket.geometry.form.Regions.TOLERANCE;
import static org.frisket.geometry.form.Regions.random;
import static org.frisket.geometry.form.Regions.region;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Region;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.clean.RegionAssert;
import org.junit.jupiter.api.Test;

class SplitTest {

	@Test
	void splitPartsAddUpAndLieOnTheirSides() {
		Region square = region(Shapes.rectangle(0, 0, 10, 10));
		Contour down = PathData.parse("M4 -1V11").contours().get(0);
		Split split = Split.along(down, square, TOLERANCE, Monitor.NONE);
		assertEquals(60, split.left().area(), 1e-9, "left of who walks down is the viewer's right");
		assertEquals(40, split.right().area(), 1e-9);
		Split stub = Split.along(PathData.parse("M4 4V5").contours().get(0), square, TOLERANCE, Monitor.NONE);
		assertEquals(60, stub.left().area(), 1e-9, "goes on beyond its ends");
		Split ring = Split.along(Shapes.circle(5, 5, 2).reversed(), square, TOLERANCE, Monitor.NONE);
		assertEquals(Math.PI * 4, ring.left().area(), 0.01);
		assertEquals(2, split.pieces().size());
		Random random = new Random(113);
		for (int i = 0; i < 150; i++) {
			Region region = random(random);
			Contour line = Contour.open(List.of(Shapes.cubic(random, 15)));
			Split parts = Split.along(line, region, TOLERANCE, Monitor.NONE);
			double slack = TOLERANCE.mm() * (region.perimeter() + line.length());
			assertEquals(region.area(), parts.left().area() + parts.right().area(), slack, "number " + i);
			Split back = Split.along(line.reversed(), region, TOLERANCE, Monitor.NONE);
			assertEquals(parts.left().area(), back.right().area(), slack, "number " + i);
			RegionAssert.assertClean(parts.left(), TOLERANCE.mm(), "left of " + i);
			RegionAssert.assertClean(parts.right(), TOLERANCE.mm(), "right of " + i);
		}
	}
}
