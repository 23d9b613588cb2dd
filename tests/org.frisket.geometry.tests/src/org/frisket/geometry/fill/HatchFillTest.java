package org.frisket.geometry.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.junit.jupiter.api.Test;

class HatchFillTest {

	private static Region region(Contour... contours) {
		return new OutlineCleaner().clean(Outline.of(contours), FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE)
				.region();
	}

	private static List<Contour> lines(HatchFill fill, Region region) {
		return fill.of(region, Tolerance.DEFAULT, Monitor.NONE);
	}

	@Test
	void levelLinesFillARectangle() {
		List<Contour> lines = lines(new HatchFill(1, 0, 0), region(Shapes.rectangle(0, 0, 10, 4)));
		assertEquals(4, lines.size());
		lines.forEach(line -> assertEquals(10, line.length(), 1e-9));
	}

	@Test
	void everyOtherLineRunsBack() {
		List<Contour> lines = lines(new HatchFill(1, 0, 0), region(Shapes.rectangle(0, 0, 10, 4)));
		for (int i = 1; i < lines.size(); i++) {
			assertTrue(Math.signum(lines.get(i).end().x() - lines.get(i).start().x()) == -Math
					.signum(lines.get(i - 1).end().x() - lines.get(i - 1).start().x()));
		}
	}

	@Test
	void linesTimesSpacingComeToTheAreaAtEveryAngle() {
		Region ring = region(Shapes.circle(3, 4, 10), Shapes.circle(3, 4, 6).reversed());
		for (int degrees = -90; degrees <= 180; degrees += 15) {
			double length = lines(new HatchFill(0.05, Math.toRadians(degrees), 0), ring).stream()
					.mapToDouble(Contour::length).sum();
			assertEquals(Math.PI * 64, length * 0.05, 0.15, "at " + degrees);
		}
	}

	@Test
	void linesStayOffTheEdgeByTheInset() {
		Region ring = region(Shapes.circle(0, 0, 10), Shapes.circle(0, 0, 6).reversed());
		for (Contour line : lines(new HatchFill(0.5, Math.toRadians(30), 0.7), ring)) {
			for (int i = 0; i <= 20; i++) {
				double radius = line.start().towards(line.end(), i / 20.0).length();
				assertTrue(radius > 6.65 && radius < 9.35, "at " + radius);
			}
		}
	}

	@Test
	void angleTurnsFromTheXAxisTowardsY() {
		Contour line = lines(new HatchFill(1, Math.toRadians(30), 0), region(Shapes.circle(0, 0, 5))).get(0);
		Point way = line.end().minus(line.start());
		assertEquals(Math.tan(Math.toRadians(30)), way.y() / way.x(), 1e-9);
	}

	@Test
	void latticeIsTheSameForAllAreas() {
		HatchFill fill = new HatchFill(1, 0.3, 0);
		Point normal = new Point(-Math.sin(0.3), Math.cos(0.3));
		List<Contour> here = lines(fill, region(Shapes.rectangle(0, 0, 10, 4)));
		List<Contour> there = lines(fill, region(Shapes.rectangle(37.3, 11.1, 5, 5)));
		double between = normal.dot(there.get(0).start().minus(here.get(0).start()));
		assertEquals(Math.rint(between), between, 1e-9);
	}

	@Test
	void nothingFillsNothing() {
		assertEquals(List.of(), lines(new HatchFill(1, 0, 0), Region.EMPTY));
		assertEquals(List.of(), lines(new HatchFill(1, 0, 5), region(Shapes.circle(0, 0, 4))));
	}

	@Test
	void spacingMustBePositive() {
		assertThrows(IllegalArgumentException.class, () -> new HatchFill(0, 0, 0));
		assertThrows(IllegalArgumentException.class, () -> new HatchFill(Double.NaN, 0, 0));
		assertThrows(IllegalArgumentException.class, () -> new HatchFill(1, 0, -1));
	}
}
