package org.frisket.geometry.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.fit.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.Centroid;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.precision.MinimumClearance;

/** Against formulas of school geometry, and against JTS on flattened curves. */
class RegionMeasuresTest {

	private static final Tolerance TOLERANCE = new Tolerance(0.01);
	/** Four cubics stand for a circle to within 2.8e-4 of its radius and 2.9e-4 of its area. */
	private static final double CIRCLE = 3e-4;

	private static RegionMeasures of(Region region) {
		return RegionMeasures.of(region, List.of(), TOLERANCE, Memory.NONE, Monitor.NONE);
	}

	private static Region region(String pathData) {
		try {
			return new OutlineCleaner().clean(PathData.parse(pathData), FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE)
					.region();
		} catch (org.frisket.geometry.PathDataException e) {
			throw new AssertionError(e);
		}
	}

	/** πr², 2πr; the centre is its middle; as thick everywhere as it is wide. */
	@ParameterizedTest
	@ValueSource(doubles = { 0.5, 3, 40 })
	void circle(double r) {
		RegionMeasures circle = of(Samples.region(Samples.circle(700, -300, r)));
		assertEquals(Math.PI * r * r, circle.area(), CIRCLE * Math.PI * r * r);
		assertEquals(2 * Math.PI * r, circle.length(), CIRCLE * 2 * Math.PI * r);
		assertEquals(700, circle.centre().orElseThrow().x(), 1e-9 * r);
		assertEquals(-300, circle.centre().orElseThrow().y(), 1e-9 * r);
		assertEquals(2 * r, circle.thinnest().orElseThrow().mm(), CIRCLE * 2 * r + TOLERANCE.mm());
		assertEquals(2 * r, circle.thickest(), CIRCLE * 2 * r + TOLERANCE.mm());
		assertEquals(2 * r, circle.leastWidth(), CIRCLE * 2 * r + TOLERANCE.mm());
		assertEquals(2 * r, circle.bounds().width(), CIRCLE * 2 * r);
		assertEquals(Optional.empty(), circle.sharpest());
		assertEquals(16, circle.nodes(), "four times four arcs");
	}

	/** πab; Ramanujan's second formula for the length, whose error is far below that of the four cubics. */
	@Test
	void ellipse() {
		double a = 10;
		double b = 6;
		Region turned = Samples.region(Samples.ellipse(0, 0, a, b)).transformed(Transform.rotation(0.6));
		RegionMeasures ellipse = of(turned);
		double h = (a - b) * (a - b) / ((a + b) * (a + b));
		double length = Math.PI * (a + b) * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h)));
		assertEquals(Math.PI * a * b, ellipse.area(), CIRCLE * Math.PI * a * b);
		assertEquals(length, ellipse.length(), CIRCLE * length);
		assertEquals(2 * b, ellipse.leastWidth(), 0.03);
		assertEquals(2 * a, ellipse.smallestBox().orElseThrow().wide(), 0.05);
		assertEquals(2 * b, ellipse.smallestBox().orElseThrow().narrow(), 0.05);
		// of the box in any position: twice the root of (a cos)² + (b sin)²
		assertEquals(2 * Math.hypot(a * Math.cos(0.6), b * Math.sin(0.6)), ellipse.bounds().width(), 0.01);
	}

	/** The centre of a half disc is 4r/3π from its straight side. */
	@Test
	void halfDisc() {
		RegionMeasures half = of(region("M-10 0A10 10 0 0 1 10 0Z"));
		assertEquals(50 * Math.PI, half.area(), CIRCLE * 50 * Math.PI);
		assertEquals(-40 / (3 * Math.PI), half.centre().orElseThrow().y(), CIRCLE * 10);
		assertEquals(0, half.centre().orElseThrow().x(), 1e-9);
		assertEquals(90, half.sharpest().orElseThrow().angle(), 0.1);
		assertEquals(10, half.leastWidth(), 0.02);
	}

	/** A cubic whose area and length are known in closed form: 0.6, and exactly 2 as its speed is 3(1 - 2t + 2t²). */
	@Test
	void cubicOfKnownAreaAndLength() {
		Contour bow = Contour.closed(PathData.parse("M0 0C0 1 1 1 1 0Z").contours().get(0).segments());
		assertEquals(0.6, Math.abs(bow.signedArea()), 1e-15);
		assertEquals(2, bow.segments().get(0).length(), 1e-12);
	}

	/** A third of the corners' sum, and the height over the longest side of 3, 4, 5. */
	@Test
	void triangle() {
		RegionMeasures triangle = of(Samples.polygon(0, 0, 4, 0, 0, 3));
		assertEquals(6, triangle.area(), 1e-12);
		assertEquals(12, triangle.length(), 1e-12);
		assertEquals(4.0 / 3, triangle.centre().orElseThrow().x(), 1e-12);
		assertEquals(1, triangle.centre().orElseThrow().y(), 1e-12);
		assertEquals(2.4, triangle.leastWidth(), 1e-9);
		assertEquals(Math.toDegrees(Math.atan2(3, 4)), triangle.sharpest().orElseThrow().angle(), 1e-9);
		assertEquals(new Point(4, 0), triangle.sharpest().orElseThrow().place());
	}

	/** Hildebrand and Rüegsegger's local thickness, by hand: R2 - R1 everywhere. */
	@Test
	void annulus() {
		RegionMeasures ring = of(Samples.region(Samples.circle(0, 0, 7), Samples.circle(0, 0, 5)));
		assertEquals(1, ring.pieces());
		assertEquals(1, ring.holes());
		assertEquals(2, ring.thinnest().orElseThrow().mm(), 0.02);
		assertEquals(2, ring.thickest(), 0.02);
		assertEquals(24 * Math.PI, ring.area(), CIRCLE * 74 * Math.PI);
		assertEquals(0, ring.centre().orElseThrow().length(), 1e-9);
	}

	/** A capsule is as thick as its two half discs everywhere; a dumbbell as thin as its neck. */
	@Test
	void capsuleAndDumbbell() {
		assertEquals(4, of(region("M0 -2H20A2 2 0 0 1 20 2H0A2 2 0 0 1 0 -2Z")).thinnest().orElseThrow().mm(), 0.02);
		RegionMeasures dumbbell = of(region("M0 0A10 10 0 1 0 0 1.5H30A10 10 0 1 0 30 0Z"));
		assertEquals(1.5, dumbbell.thinnest().orElseThrow().mm(), 0.02);
		assertEquals(20, dumbbell.thickest(), 0.05);
	}

	/** A disc at distance x from the tip of a wedge has the radius x sin of half its angle. */
	@Test
	void wedge() {
		RegionMeasures wedge = of(Samples.polygon(0, 0, 40, -40 * Math.tan(Math.toRadians(15)), 40,
				40 * Math.tan(Math.toRadians(15))));
		assertEquals(30, wedge.sharpest().orElseThrow().angle(), 1e-9);
		// it is thin at its tip at any width, so that only what cannot be told apart is given
		assertTrue(wedge.thinnest().orElseThrow().mm() < 0.1, wedge.toString());
	}

	@Test
	void nothing() {
		RegionMeasures nothing = of(Region.EMPTY);
		assertEquals(0, nothing.area());
		assertEquals(0, nothing.length());
		assertEquals(0, nothing.pieces());
		assertEquals(Optional.empty(), nothing.centre());
		assertEquals(Optional.empty(), nothing.thinnest());
		assertEquals(Optional.empty(), nothing.smallestBox());
	}

	@Test
	void linesCountByTheirLength() {
		RegionMeasures lines = RegionMeasures.of(Region.EMPTY, PathData.parse("M0 0H30M0 5L3 9").contours(), TOLERANCE,
				Memory.NONE, Monitor.NONE);
		assertEquals(35, lines.length(), 1e-12);
		assertEquals(4, lines.nodes());
		assertEquals(2, lines.lines());
		assertEquals(9, lines.bounds().maxY());
	}

	/** Blobs of random cubics; JTS sees chords within 1e-5 mm, whose error in area is below that times the length. */
	@ParameterizedTest
	@CsvSource({ "1", "2", "3", "4", "5", "6", "7", "8" })
	void blobsAsJtsSeesThem(long seed) {
		Random random = new Random(seed);
		Region blobs = region(blob(random, 0, 0) + blob(random, 60, 10) + blob(random, 20, 70));
		RegionMeasures own = of(blobs);
		double deviation = 1e-5;
		Geometry flat = Polygons.of(blobs, deviation);
		assertEquals(flat.getArea(), own.area(), deviation * own.length());
		assertEquals(flat.getLength(), own.length(), 1e-6 * own.length());
		Coordinate centre = Centroid.getCentroid(flat);
		assertEquals(0, own.centre().orElseThrow().distance(new Point(centre.x, centre.y)), 1e-4);
		Envelope box = flat.getEnvelopeInternal();
		assertEquals(box.getWidth(), own.bounds().width(), 2 * deviation);
		assertEquals(box.getMaxY(), own.bounds().maxY(), deviation);
		assertEquals(new MinimumDiameter(flat).getLength(), own.leastWidth(), TOLERANCE.mm());
		assertEquals(flat.getNumGeometries(), own.pieces());
		double widest = 0;
		for (int i = 0; i < flat.getNumGeometries(); i++) {
			widest = Math.max(widest, 2 * MaximumInscribedCircle
					.getRadiusLine(Polygons.of(blobs.pieces().get(i), 0.002), 0.002).getLength());
		}
		assertEquals(widest, own.thickest(), 0.02);
	}

	/** Of shapes with long edges alone the least clearance is that between the pieces. */
	@Test
	void gapIsTheClearanceOfJts() {
		Random random = new Random(11);
		for (int i = 0; i < 20; i++) {
			double gap = 0.2 + random.nextDouble();
			Region two = Samples.both(Samples.rectangle(0, 0, 10, 8), Samples.rectangle(10 + gap, random.nextDouble() * 6, 9, 7))
					.transformed(Transform.rotation(random.nextDouble()));
			assertEquals(MinimumClearance.getDistance(Polygons.of(two, 0.01)), of(two).narrowestGap().orElseThrow().mm(),
					1e-9);
		}
	}

	/** By the other way: opening. What it does not find thin at one width it must not be thinner than. */
	@ParameterizedTest
	@ValueSource(longs = { 3, 5, 8 })
	void thinnestPlaceIsWhereOpeningBeginsToTakeSomething(long seed) {
		Region blob = region(blob(new Random(seed), 0, 0));
		double thinnest = of(blob).thinnest().orElseThrow().mm();
		assertTrue(LocalThickness.thinnerThan(blob, 0.97 * thinnest, TOLERANCE, Monitor.NONE).isEmpty());
		assertTrue(!LocalThickness.thinnerThan(blob, 1.03 * thinnest + 0.02, TOLERANCE, Monitor.NONE).isEmpty());
	}

	private static String blob(Random random, double x, double y) {
		int arms = 5 + random.nextInt(4);
		List<double[]> corners = new ArrayList<>();
		for (int i = 0; i < arms; i++) {
			double angle = 2 * Math.PI * i / arms;
			double r = 8 + 12 * random.nextDouble();
			corners.add(new double[] { x + r * Math.cos(angle), y + r * Math.sin(angle) });
		}
		StringBuilder path = new StringBuilder();
		for (int i = 0; i < arms; i++) {
			double[] before = corners.get((i + arms - 1) % arms);
			double[] from = corners.get(i);
			double[] to = corners.get((i + 1) % arms);
			double[] after = corners.get((i + 2) % arms);
			if (i == 0) {
				path.append("M").append(from[0]).append(' ').append(from[1]);
			}
			path.append("C").append(from[0] + (to[0] - before[0]) / 6).append(' ').append(from[1] + (to[1] - before[1]) / 6)
					.append(' ').append(to[0] - (after[0] - from[0]) / 6).append(' ').append(to[1] - (after[1] - from[1]) / 6)
					.append(' ').append(to[0]).append(' ').append(to[1]);
		}
		return path.append("Z").toString();
	}
}
