package org.frisket.toolpath.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.frisket.geometry.Point;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Straight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values derived from the equations of uniform acceleration and of the circle within a corner. */
class MotionTimeTest {

	@ParameterizedTest
	@CsvSource({ "50, 0, 0, 100, 1000, 0.600000", "10, 0, 0, 100, 1000, 0.200000", "4, 0, 0, 100, 1000, 0.126491",
			"50, 20, 0, 100, 1000, 0.582000", "1, 30, 10, 100, 1000, 0.037460", "300, 0, 0, 400, 4000, 0.850000" })
	void trapezoids(double distance, double entry, double exit, double cruise, double acceleration, double seconds) {
		assertEquals(seconds, Trapezoid.seconds(distance, entry, exit, cruise, acceleration), 5e-7);
	}

	@ParameterizedTest
	@CsvSource({ "4, 0, 0, 63.2456", "1, 30, 10, 38.7298" })
	void peaks(double distance, double entry, double exit, double peak) {
		assertEquals(peak, Trapezoid.peak(distance, entry, exit, 1000), 5e-5);
	}

	/** By the angle inside the corner. */
	@ParameterizedTest
	@CsvSource({ "36, 2.990698", "60, 4.472136", "90, 6.948688", "108, 9.204421", "120, 11.370226", "135, 15.580161",
			"150, 23.810813", "170, 72.358999" })
	void corners(double inside, double speed) {
		assertEquals(speed, new Drive(100, 1000, 0.02).cornerSpeed(Math.toRadians(180 - inside)), 5e-6);
	}

	@Test
	void straightOnAndBack() {
		Drive drive = new Drive(100, 1000, 0.02);
		assertEquals(Double.POSITIVE_INFINITY, drive.cornerSpeed(0));
		assertEquals(0, drive.cornerSpeed(Math.PI), 1e-6);
	}

	@Test
	void curves() {
		assertEquals(31.6228, new Drive(100, 500, 0.02).curveSpeed(1 / 2.0), 5e-5);
		assertEquals(22.3607, new Drive(100, 1000, 0.02).curveSpeed(-1 / 0.5), 5e-5);
		assertEquals(Double.POSITIVE_INFINITY, new Drive(100, 1000, 0.02).curveSpeed(0));
	}

	@Test
	void aSquareSlowsAtItsCorners() {
		List<Move> square = polyline(0, 0, 10, 0, 10, 10, 0, 10, 0, 0);
		MotionTime time = MotionTime.of(square, new Drive(50, 1000, 0.02));
		assertEquals(0.243534, time.seconds(0), 5e-7);
		assertEquals(0.237068, time.seconds(1), 5e-7);
		assertEquals(0.237068, time.seconds(2), 5e-7);
		assertEquals(0.243534, time.seconds(3), 5e-7);
		assertEquals(0.961205, time.seconds(), 1e-6);
		assertEquals(1.0, MotionTime.of(square, new Drive(50, 1000, 0)).seconds(), 1e-9);
	}

	@Test
	void tenMovesInALineAreOne() {
		double[] line = new double[22];
		for (int i = 0; i <= 10; i++) {
			line[2 * i] = i;
		}
		assertEquals(0.25, MotionTime.of(polyline(line), new Drive(50, 1000, 0.02)).seconds(), 1e-9);
	}

	/** A full circle at the speed its curve allows, but for speeding up and slowing down. */
	@Test
	void aCircleIsLimitedByItsCurve() {
		List<Move> circle = List.of(new Arc(new Point(0, 0), 2, 0, 2 * Math.PI));
		double v = Math.sqrt(500 * 2);
		double cruising = 4 * Math.PI / v;
		assertEquals(0.397384, cruising, 5e-7);
		assertEquals(cruising + v / 500, MotionTime.of(circle, new Drive(100, 500, 0.02)).seconds(), 1e-9);
	}

	/** Nothing is sped up or slowed down faster than the machine can, and no limit is passed. */
	@Test
	void manyMovesKeepTheLimits() {
		SplittableRandom random = new SplittableRandom(3);
		for (int run = 0; run < 300; run++) {
			int n = 2 + random.nextInt(30);
			double[] xy = new double[2 * n];
			for (int i = 0; i < 2 * n; i++) {
				xy[i] = random.nextDouble() * Math.pow(10, random.nextInt(3));
			}
			List<Move> moves = polyline(xy);
			Drive drive = new Drive(5 + 200 * random.nextDouble(), 100 + 3000 * random.nextDouble(), 0.05);
			double seconds = MotionTime.of(moves, drive).seconds();
			double length = moves.stream().mapToDouble(Move::length).sum();
			double stopping = moves.stream().mapToDouble(m -> MotionTime.travel(m.length(), drive)).sum();
			assertTrue(seconds >= length / drive.speed() - 1e-9);
			assertTrue(seconds >= MotionTime.travel(length, drive) - 1e-9, "faster than one straight way");
			assertTrue(seconds <= stopping + 1e-9, "slower than stopping at every corner");
		}
	}

	private static List<Move> polyline(double... xy) {
		List<Move> moves = new ArrayList<>();
		for (int i = 2; i < xy.length; i += 2) {
			moves.add(new Straight(new Point(xy[i - 2], xy[i - 1]), new Point(xy[i], xy[i + 1])));
		}
		return moves;
	}
}
