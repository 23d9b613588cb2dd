package org.frisket.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** The largest rectangle that is left. */
class OffcutsTest {

	private final Job job = Shapes.job();

	private Bounds largest() {
		return Offcuts.largest(Shapes.laid(job).get(0), Tolerance.DEFAULT, Monitor.NONE).orElseThrow();
	}

	@Test
	void anEmptySheetIsLeftWhole() {
		Jobs.addSheet(job, null, 297, 210);
		assertEquals(new Bounds(0, 0, 297, 210), largest());
	}

	@Test
	void besideASquareItIsExactToTheGap() {
		Sheet sheet = Jobs.addSheet(job, null, 200, 100);
		sheet.setGap(2);
		Shapes.cut(job, 0, 0, 40.3, 60);
		Jobs.addPlacement(sheet, "e1", 5 + 40.3 / 2, 35, 0);
		Bounds left = largest();
		assertEquals(47.3, left.minX(), 1e-6);
		assertEquals(200 - 47.3, left.width(), 1e-6);
		assertEquals(100, left.height(), 1e-6);
		assertTrue(Offcuts.isWorthKeeping(left));
		assertFalse(Offcuts.isWorthKeeping(new Bounds(0, 0, 300, 20)));
	}

	/**
	 * Under a slanted edge the best rectangle is found by a sum: in a corner triangle with legs of 100 it has sides of 50.
	 */
	@Test
	void underASlantItIsHalfOfTheTriangle() {
		Sheet sheet = Jobs.addSheet(job, null, 100, 100);
		Shapes.add(Shapes.card(job), OperationKind.CUT, "M0 100L100 0V100Z");
		Jobs.addPlacement(sheet, "e1", 50, 50, 0);
		Bounds left = largest();
		assertEquals(2500, left.width() * left.height(), 1);
	}

	@Test
	void aFullSheetLeavesNothing() {
		Sheet sheet = Jobs.addSheet(job, null, 100, 100);
		Shapes.cut(job, 0, 0, 100, 100);
		Jobs.addPlacement(sheet, "e1", 50, 50, 0);
		assertTrue(Offcuts.largest(Shapes.laid(job).get(0), Tolerance.DEFAULT, Monitor.NONE).isEmpty());
	}

	/** All rectangles of a fine grid, each looked at with JTS. */
	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6, 7, 8 })
	void noRectangleOfAFineGridIsLarger(long seed) {
		Random random = new Random(seed);
		Sheet sheet = Jobs.addSheet(job, null, 90, 60);
		sheet.setGap(random.nextInt(4));
		Shapes.add(Shapes.card(job), OperationKind.CUT, "M0 0L20 5L8 18Z");
		Shapes.add(Shapes.card(job), OperationKind.CUT, Shapes.disc(50, 0, 7));
		Shapes.add(Shapes.card(job), OperationKind.CUT, Shapes.box(100, 0, 24, 24) + "M104 4v16h16v-16z");
		for (int i = 0; i < 7; i++) {
			Jobs.addPlacement(sheet, "e" + (1 + random.nextInt(3)), random.nextDouble() * 90, random.nextDouble() * 60,
					random.nextInt(360));
		}
		Bounds found = largest();
		List<Geometry> taken = new ArrayList<>();
		Shapes.laid(job).get(0).parts().forEach(part -> taken.add(Polygons.of(part.room(), 0.001).buffer(sheet.getGap(), 64)));
		GeometryFactory factory = Polygons.factory();
		Geometry rectangle = factory.toGeometry(new Envelope(found.minX(), found.maxX(), found.minY(), found.maxY()));
		taken.forEach(each -> assertTrue(each.intersection(rectangle).getArea() < 0.02 * rectangle.getLength(), "it is free"));
		double best = bruteForce(taken, factory, 90, 60, 0.5);
		double area = found.width() * found.height();
		assertTrue(area >= best - 1e-6, () -> "seed " + seed + ": " + area + " of " + best);
	}

	private static double bruteForce(List<Geometry> taken, GeometryFactory factory, int width, int height, double cell) {
		int columns = (int) (width / cell);
		int rows = (int) (height / cell);
		int[][] full = new int[rows + 1][columns + 1];
		List<PreparedGeometry> prepared = taken.stream().map(PreparedGeometryFactory::prepare).toList();
		for (int r = 0; r < rows; r++) {
			for (int c = 0; c < columns; c++) {
				Geometry square = factory.toGeometry(new Envelope(c * cell, (c + 1) * cell, r * cell, (r + 1) * cell));
				Geometry middle = factory.createPoint(new Coordinate((c + 0.5) * cell, (r + 0.5) * cell));
				int one = prepared.stream().anyMatch(each -> each.intersects(middle) || each.intersects(square)) ? 1 : 0;
				full[r + 1][c + 1] = one + full[r][c + 1] + full[r + 1][c] - full[r][c];
			}
		}
		int best = 0;
		for (int top = 0; top < rows; top++) {
			for (int bottom = top + 1; bottom <= rows; bottom++) {
				int from = 0;
				for (int c = 0; c < columns; c++) {
					if (full[bottom][c + 1] - full[top][c + 1] - full[bottom][c] + full[top][c] > 0) {
						from = c + 1;
					}
					best = Math.max(best, (c + 1 - from) * (bottom - top));
				}
			}
		}
		return best * cell * cell;
	}
}
