package org.frisket.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

/** Against areas by Green's theorem, arc lengths by numeric quadrature, and Wang's bound on chords, worked apart from the code. */
class SegmentTest {

	private static final Cubic CUP = new Cubic(p(0, 0), p(0, 1), p(1, 1), p(1, 0));
	private static final Cubic WAVE = new Cubic(p(0, 0), p(10, 30), p(60, 40), p(80, 0));

	private static Point p(double x, double y) {
		return new Point(x, y);
	}

	@Test
	void cubicAreaMatchesGreensTheorem() {
		assertEquals(-0.6, CUP.areaTerm(), 1e-15);
		assertEquals(-1530, WAVE.areaTerm(), 1e-10);
	}

	@Test
	void quadraticAreaSurvivesRaisingTheDegree() {
		assertEquals(-4.0 / 3, Cubic.ofQuadratic(p(0, 0), p(1, 2), p(2, 0)).areaTerm(), 1e-15);
	}

	@Test
	void cubicLengthWithPolynomialSpeedIsExact() {
		assertEquals(2, CUP.length(), 2e-9);
	}

	@Test
	void lengthsAgreeWithClosedFormAndQuadrature() {
		double parabola = Math.sqrt(5) + Math.log(2 + Math.sqrt(5)) / 2;
		assertEquals(parabola, Cubic.ofQuadratic(p(0, 0), p(1, 2), p(2, 0)).length(), 1e-8);
		assertEquals(101.678211, WAVE.length(), 1e-6);
	}

	@Test
	void chordCountFollowsWangsBound() {
		List<Double> parameters = new ArrayList<>();
		WAVE.flatten(0.05, parameters::add);
		assertEquals(30, parameters.size());
		assertEquals(1.0, parameters.get(29));
	}

	@Test
	void circleOfFourCubicsHasKnownAreaAndLength() {
		Contour circle = Shapes.circle(0, 0, 1);
		assertEquals(3.142472332657, Math.abs(circle.signedArea()), 1e-12);
		assertEquals(6.284066792, circle.length(), 1e-8);
		double most = 0;
		for (double t = 0; t <= 1; t += 1e-4) {
			most = Math.max(most, circle.segments().get(0).at(t).length() - 1);
		}
		assertEquals(2.7253e-4, most, 1e-8);
	}

	@Test
	void stretchesJoinUpToTheWhole() {
		Random random = new Random(1);
		for (int i = 0; i < 200; i++) {
			Cubic whole = Shapes.cubic(random, 10);
			double t = random.nextDouble();
			Cubic left = whole.between(0, t);
			Cubic right = whole.between(t, 1);
			assertEquals(left.end(), right.start());
			double u = random.nextDouble();
			assertTrue(left.at(u).distance(whole.at(t * u)) < 1e-12);
			assertTrue(right.at(u).distance(whole.at(t + (1 - t) * u)) < 1e-12);
		}
	}

	@Test
	void wholeStretchIsTheVeryObject() {
		assertSame(WAVE, WAVE.between(0, 1));
	}

	@Test
	void boundsAreTight() {
		Random random = new Random(2);
		for (int i = 0; i < 200; i++) {
			Cubic cubic = Shapes.cubic(random, 10);
			Bounds sampled = Bounds.EMPTY;
			for (int k = 0; k <= 2000; k++) {
				sampled = sampled.with(cubic.at(k / 2000.0));
			}
			Bounds bounds = cubic.bounds();
			assertTrue(bounds.grown(1e-12).with(sampled).equals(bounds.grown(1e-12)), "holds all samples");
			assertEquals(sampled.width(), bounds.width(), 1e-4);
			assertEquals(sampled.height(), bounds.height(), 1e-4);
		}
	}

	@Test
	void chordsStayWithinTheDeviation() {
		Random random = new Random(3);
		for (int i = 0; i < 100; i++) {
			Cubic cubic = Shapes.cubic(random, 50);
			double[] before = { 0 };
			cubic.flatten(0.01, t -> {
				Point from = cubic.at(before[0]);
				Point chord = cubic.at(t).minus(from);
				for (int k = 1; k < 8; k++) {
					Point off = cubic.at(before[0] + (t - before[0]) * k / 8).minus(from);
					assertTrue(Math.abs(off.cross(chord)) / chord.length() <= 0.01);
				}
				before[0] = t;
			});
		}
	}

	@Test
	void tangentSkipsControlPointsWithoutExtent() {
		Cubic blunt = new Cubic(p(0, 0), p(0, 0), p(3, 4), p(3, 4));
		assertEquals(p(0.6, 0.8), blunt.startTangent());
		assertTrue(blunt.endTangent().distance(p(0.6, 0.8)) < 1e-15);
	}

	@Test
	void shoelaceGivesThePublishedArea() {
		Contour contour = Contour.polygon(List.of(p(3, 4), p(5, 11), p(12, 8), p(9, 5), p(5, 6)));
		assertEquals(-30, contour.signedArea(), 1e-12);
		assertEquals(30, contour.reversed().signedArea(), 1e-12);
	}

	/** Pick's theorem: A = I + B / 2 - 1, on random lattice triangles. */
	@Test
	void latticeTrianglesObeyPicksTheorem() {
		Random random = new Random(4);
		for (int i = 0; i < 100; i++) {
			Point a = p(random.nextInt(12), random.nextInt(12));
			Point b = p(random.nextInt(12), random.nextInt(12));
			Point c = p(random.nextInt(12), random.nextInt(12));
			double area = Math.abs(Contour.polygon(List.of(a, b, c)).signedArea());
			if (area > 0) {
				int border = border(a, b) + border(b, c) + border(c, a);
				assertEquals(inner(a, b, c) + border / 2.0 - 1, area, 1e-9);
			}
		}
	}

	private static int border(Point a, Point b) {
		int x = (int) Math.abs(a.x() - b.x());
		int y = (int) Math.abs(a.y() - b.y());
		while (y != 0) {
			int rest = x % y;
			x = y;
			y = rest;
		}
		return x;
	}

	private static int inner(Point a, Point b, Point c) {
		int count = 0;
		for (int x = 0; x < 12; x++) {
			for (int y = 0; y < 12; y++) {
				Point place = p(x, y);
				double one = b.minus(a).cross(place.minus(a));
				double two = c.minus(b).cross(place.minus(b));
				double three = a.minus(c).cross(place.minus(c));
				count += one > 0 && two > 0 && three > 0 || one < 0 && two < 0 && three < 0 ? 1 : 0;
			}
		}
		return count;
	}
}
