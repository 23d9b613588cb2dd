package org.frisket.material.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.tools.Blade;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.junit.jupiter.api.Test;

class CalibrationTest {

	/** Values derived with numeric integration outside of this program, for an offset of 0.25 mm. */
	@Test
	void aDraggedTipKeepsToTheKnownRelations() {
		double[][] circles = { { 10, 10.003125, 1.4321, 9.996875 }, { 2, 2.015564, 7.1250, 1.984313 },
				{ 1, 1.030776, 14.0362, 0.968246 }, { 0.5, 0.559017, 26.5651, 0.433013 } };
		for (double[] circle : circles) {
			assertEquals(circle[1], BladeGeometry.axisRadius(circle[0], 0.25), 1e-6);
			assertEquals(circle[2], BladeGeometry.axisLead(circle[0], 0.25), 1e-4);
			assertEquals(circle[3], BladeGeometry.tipRadius(circle[0], 0.25), 1e-6);
		}
		assertEquals(0.964994, BladeGeometry.lag(45, 1, 0.25), 1e-6);
		assertEquals(1.185337, BladeGeometry.lag(90, 1, 0.25), 1e-6);
		assertEquals(1.405681, BladeGeometry.lag(135, 1, 0.25), 1e-6);
		assertEquals(0.173205, BladeGeometry.overrun(0.3, 60), 1e-6);
		assertEquals(41.570796, BladeGeometry.convexAxisLength(40, 0.25), 1e-6);
	}

	/** A closed square of side 8 gains one turn of the offset; the circle runs on its larger radius. */
	@Test
	void cellsAreLedByTheAxis() {
		List<Contour> contours = OffsetSheet.contours(0.25);
		assertEquals(BladeGeometry.convexAxisLength(32, 0.25), length(contours.get(0).flattened(1e-5)), 0.01);
		assertEquals(2 * Math.PI * BladeGeometry.axisRadius(1.5, 0.25), length(contours.get(1).flattened(1e-5)), 0.005);
		assertEquals(32, length(OffsetSheet.contours(0).get(0).flattened(1e-5)), 1e-9);
	}

	private static double length(List<Point> points) {
		double length = 0;
		for (int i = 0; i < points.size(); i++) {
			Point next = points.get((i + 1) % points.size());
			length += Math.hypot(next.x() - points.get(i).x(), next.y() - points.get(i).y());
		}
		return length;
	}

	/**
	 * What a right angle misses, by dragging the tip along the axis path in small steps: it keeps its distance and moves
	 * straight towards the axis, and nothing else is known here.
	 */
	private static double dragged(double madeFor, double offset) {
		double step = 0.0005;
		List<double[]> axis = new ArrayList<>();
		for (double x = -4; x < madeFor; x += step) {
			axis.add(new double[] { x, 0 });
		}
		for (double angle = 0; angle < Math.PI / 2; angle += step / Math.max(step, madeFor)) {
			axis.add(new double[] { madeFor * Math.cos(angle), madeFor * Math.sin(angle) });
		}
		for (double y = madeFor; y < 4; y += step) {
			axis.add(new double[] { 0, y });
		}
		double tipX = -4 - offset;
		double tipY = 0;
		double past = 0;
		double nearest = Double.POSITIVE_INFINITY;
		for (double[] at : axis) {
			double distance = Math.hypot(at[0] - tipX, at[1] - tipY);
			tipX = at[0] - offset * (at[0] - tipX) / distance;
			tipY = at[1] - offset * (at[1] - tipY) / distance;
			past = Math.max(past, tipX);
			nearest = Math.min(nearest, Math.hypot(tipX, tipY));
		}
		return past > nearest ? past : -nearest;
	}

	@Test
	void theOffsetIsFoundAgainFromSimulatedSheets() {
		Random random = new Random(3);
		double squares = 0;
		int within = 0;
		int sheets = 0;
		for (double offset : new double[] { 0.2, 0.25, 0.33, 0.4 }) {
			double[] misses = new double[9];
			double[] offsets = new double[9];
			for (int cell = 0; cell < 9; cell++) {
				offsets[cell] = Math.rint((offset - 0.083 + 0.02 * cell) * 100) / 100;
				misses[cell] = dragged(offsets[cell], offset);
			}
			for (int round = 0; round < 250; round++) {
				List<OffsetReading> readings = new ArrayList<>();
				for (int cell = 0; cell < 9; cell++) {
					readings.add(new OffsetReading(offsets[cell], misses[cell] + 0.008 * random.nextGaussian()));
				}
				Collections.shuffle(readings, random);
				Estimate estimate = OffsetCalibration.of(readings);
				double away = (estimate.value() - offset) / estimate.error();
				squares += away * away;
				within += Math.abs(away) <= 2.365 ? 1 : 0;
				sheets++;
			}
		}
		// Student's t with 7 degrees of freedom: 2.365 for 95 %, variance 7/5
		assertTrue(within >= 0.93 * sheets, within + " of " + sheets);
		assertTrue(Math.sqrt(squares / sheets) < 1.1 * Math.sqrt(1.4), Math.sqrt(squares / sheets) + " errors");
		assertTrue(Math.sqrt(squares / sheets) > 0.8 * Math.sqrt(1.4), Math.sqrt(squares / sheets) + " errors");
	}

	@Test
	void gapsWithoutASignDoToo() {
		Random random = new Random(8);
		for (int round = 0; round < 100; round++) {
			double offset = 0.2 + 0.2 * random.nextDouble();
			List<OffsetReading> readings = new ArrayList<>();
			for (double madeFor = 0.15; madeFor < 0.46; madeFor += 0.05) {
				readings.add(new OffsetReading(madeFor,
						Math.abs(dragged(madeFor, offset) + 0.006 * random.nextGaussian())));
			}
			Estimate estimate = OffsetCalibration.ofSizes(readings);
			assertEquals(offset, estimate.value(), Math.max(0.012, 3 * estimate.error()));
		}
	}

	@Test
	void sheetsThatTellNothingAreRefused() {
		List<OffsetReading> two = List.of(new OffsetReading(0.2, -0.05), new OffsetReading(0.3, 0.08));
		assertThrows(IllegalArgumentException.class, () -> OffsetCalibration.of(two));
		List<OffsetReading> far = List.of(new OffsetReading(0.2, -0.3), new OffsetReading(0.25, -0.25),
				new OffsetReading(0.3, -0.2));
		assertTrue(assertThrows(IllegalArgumentException.class, () -> OffsetCalibration.of(far)).getMessage()
				.contains("other offsets"));
		assertThrows(IllegalArgumentException.class, () -> new OffsetSheet(List.of()));
	}

	@Test
	void sheetsAreJobs() {
		OffsetSheet sheet = OffsetSheet.about((Blade) ToolOptions.usual(ToolKind.BLADE), 0.05, 7);
		assertEquals(List.of(0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4), sheet.offsets());
		Job job = sheet.job();
		assertEquals(14, Jobs.elements(job).size());
		ScaleSheet cross = ScaleSheet.on(Machine.plain());
		assertEquals(180, cross.width());
		assertEquals(270, cross.height());
		assertEquals(1, Jobs.elements(cross.job()).size());
	}

	/** A known distortion is laid over the ends of the cross, distances are measured with noise, and it is found again. */
	@Test
	void scaleAndSkewAreFoundAgainWithinTheirErrors() {
		Random random = new Random(5);
		ScaleSheet sheet = new ScaleSheet(180, 270);
		double[] squares = new double[3];
		int rounds = 2000;
		for (int round = 0; round < rounds; round++) {
			double sx = 0.98 + 0.04 * random.nextDouble();
			double sy = 0.98 + 0.04 * random.nextDouble();
			double skew = random.nextDouble() - 0.5;
			double noise = 0.1;
			double[] right = { sx * 90, 0 };
			double up = Math.toRadians(90 - skew);
			double[] top = { sy * 135 * Math.cos(up), sy * 135 * Math.sin(up) };
			double[] bottom = { -top[0], -top[1] };
			double[] left = { -right[0], 0 };
			ScaleErrors found = new ScaleReading(distance(left, right) + noise * random.nextGaussian(),
					distance(top, bottom) + noise * random.nextGaussian(),
					distance(right, top) + noise * random.nextGaussian(),
					distance(right, bottom) + noise * random.nextGaussian(), noise).against(sheet);
			squares[0] += Math.pow((found.x().value() - sx) / found.x().error(), 2);
			squares[1] += Math.pow((found.y().value() - sy) / found.y().error(), 2);
			squares[2] += Math.pow((found.skew().value() - skew) / found.skew().error(), 2);
			assertEquals(1, found.correctX() * found.x().value(), 1e-12);
			assertEquals(1, found.correctY() * found.y().value(), 1e-12);
		}
		for (double sum : squares) {
			assertEquals(1, Math.sqrt(sum / rounds), 0.06);
		}
	}

	private static double distance(double[] a, double[] b) {
		return Math.hypot(a[0] - b[0], a[1] - b[1]);
	}

	@Test
	void withoutDiagonalsThereIsNoSkewAndWrongLengthsAreRefused() {
		ScaleSheet sheet = new ScaleSheet(200, 200);
		ScaleErrors found = new ScaleReading(200.6, 199, 0, 0, 0.1).against(sheet);
		assertEquals(1.003, found.x().value(), 1e-12);
		assertNull(found.skew());
		assertThrows(IllegalArgumentException.class, () -> new ScaleReading(20.06, 199, 0, 0, 0.1).against(sheet));
		assertThrows(IllegalArgumentException.class, () -> new ScaleReading(200, 200, 0, 0, 0));
	}
}
