package org.frisket.geometry.lines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

class LinesTest {

	private static final Tolerance TOLERANCE = Tolerance.DEFAULT;

	private static double length(List<Contour> lines) {
		return lines.stream().mapToDouble(Contour::length).sum();
	}

	@Test
	void dashesOfASquareLieOverItsCorners() {
		Contour square = Shapes.rectangle(0, 0, 30, 30);
		// 30 mm hold ten times 2 and 1
		List<Contour> dashes = new Dashes(2, 1).of(square);
		assertEquals(40, dashes.size());
		dashes.forEach(dash -> assertEquals(2, dash.length(), 1e-9));
		for (Segment side : square.segments()) {
			assertTrue(dashes.stream().anyMatch(dash -> dash.segments().size() == 2
					&& dash.segments().get(0).end().distance(side.start()) < 1e-9
					&& Math.abs(dash.segments().get(0).length() - 1) < 1e-9), "corner " + side.start());
		}
	}

	@Test
	void openLinesStartAndEndWithWholeDashes() {
		// 2 1 2 1 2
		List<Contour> dashes = new Dashes(2, 1).of(Contour.open(List.of(new Line(new Point(0, 0), new Point(8, 0)))));
		assertEquals(List.of(2.0, 2.0, 2.0), dashes.stream().map(d -> Math.rint(d.length() * 1e9) / 1e9).toList());
		assertEquals(new Point(0, 0), dashes.get(0).start());
		assertEquals(8, dashes.get(2).end().x(), 1e-12);
		Contour shortLine = Contour.open(List.of(new Line(new Point(0, 0), new Point(3, 0))));
		assertEquals(List.of(shortLine), new Dashes(2, 1).of(shortLine), "no room for a gap");
		assertThrows(IllegalArgumentException.class, () -> new Dashes(2, 0));
		assertThrows(IllegalArgumentException.class, () -> new Dashes(Double.NaN, 1));
	}

	@Test
	void dashesOfASmoothLoopAreEven() {
		Contour circle = Shapes.circle(0, 0, 10);
		List<Contour> dashes = new Dashes(3, 2).of(circle);
		// 62.8 mm hold 12.6 times 5
		assertEquals(13, dashes.size());
		dashes.forEach(dash -> assertEquals(circle.length() / 13 * 3 / 5, dash.length(), 1e-6));
		for (Contour dash : dashes) {
			for (double t : new double[] { 0, 0.5, 1 }) {
				assertEquals(10, dash.segments().get(0).at(t).length(), 0.01, "off the circle");
			}
		}
	}

	@Test
	void patternsOfRandomLinesKeepTheirShareAndTheirCorners() {
		Random random = new Random(131);
		for (int i = 0; i < 300; i++) {
			Contour line = random.nextBoolean() ? Shapes.polygon(random, 3 + random.nextInt(5), 40)
					: Shapes.blob(random, 3 + random.nextInt(3), new Point(0, 0), 30);
			double dash = 0.5 + 3 * random.nextDouble();
			double gap = 0.5 + 3 * random.nextDouble();
			List<Contour> dashes = new Dashes(dash, gap).of(line);
			String name = "number " + i;
			double share = length(dashes) / line.length();
			assertTrue(share >= dash / (dash + gap) - 1e-6, name + " share " + share);
			double most = 0;
			for (int k = 0; k < line.segments().size(); k++) {
				Segment before = line.segments().get((k + line.segments().size() - 1) % line.segments().size());
				Segment after = line.segments().get(k);
				most += Math.min(after.length(), dash + gap);
				if (Bend.isCorner(before, after)) {
					assertCovered(dashes, before, after, dash / 3, name);
				}
			}
			// what is more than the share are stretches too short for the pattern
			assertTrue(length(dashes) <= line.length() * dash / (dash + gap) + most, name);
			for (Contour each : dashes) {
				assertTrue(each.length() >= 2 * dash / 3 - 1e-6, name + " dash " + each.length());
			}
		}
	}

	/** Places up to a reach on both sides of a corner lie on dashes: half a dash, squeezed at most to two thirds. */
	private static void assertCovered(List<Contour> dashes, Segment before, Segment after, double reach, String name) {
		double back = new ArcLength(Contour.open(List.of(before))).length();
		double ahead = new ArcLength(Contour.open(List.of(after))).length();
		for (int i = 0; i <= 4; i++) {
			double way = reach * 0.99 * i / 4;
			assertOn(dashes, new ArcLength(Contour.open(List.of(before))).at(back - Math.min(back, way)).point(), name);
			assertOn(dashes, new ArcLength(Contour.open(List.of(after))).at(Math.min(ahead, way)).point(), name);
		}
	}

	private static void assertOn(List<Contour> dashes, Point place, String name) {
		Coordinate at = new Coordinate(place.x(), place.y());
		assertTrue(dashes.stream().anyMatch(dash -> line(dash).distance(Polygons.factory().createPoint(at)) < 1e-3),
				name + ": gap at " + place);
	}

	private static Geometry line(Contour contour) {
		return Polygons.factory().createLineString(contour.flattened(1e-4).stream()
				.map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
	}

	@Test
	void stretchesOfAClosedLineRunOverItsStart() {
		ArcLength square = new ArcLength(Shapes.rectangle(0, 0, 10, 10));
		Contour over = square.stretch(35, 45);
		assertEquals(10, over.length(), 1e-9);
		assertEquals(new Point(5, 0), over.start());
		assertEquals(new Point(0, 5), over.end());
		assertEquals(40, square.stretch(0, 40).length(), 1e-9);
		assertThrows(IllegalArgumentException.class, () -> square.stretch(5, 5));
	}

	private static Region region(Contour... contours) {
		return new OutlineCleaner().clean(Outline.of(contours), FillRule.NON_ZERO, TOLERANCE, Monitor.NONE).region();
	}

	@Test
	void weedLinesBoxAndPartTheirParts() {
		Region parts = region(Shapes.rectangle(0, 0, 10, 10), Shapes.rectangle(20, 0, 10, 4),
				Shapes.rectangle(20, 6, 10, 4));
		List<Contour> lines = new Weeding(3, true, 0, 0.5).of(parts, TOLERANCE, Monitor.NONE);
		assertEquals(3, lines.size());
		assertTrue(lines.get(0).isClosed());
		assertEquals(36 * 16, -lines.get(0).signedArea(), 1e-9);
		assertEquals(PathData.parse("M15 -3V13").contours().get(0), lines.get(1));
		assertEquals(PathData.parse("M15 5H33").contours().get(0), lines.get(2));
		assertEquals(1, new Weeding(3, false, 0, 0).of(parts, TOLERANCE, Monitor.NONE).size());
		assertTrue(new Weeding(3, true, 5, 0).of(Region.EMPTY, TOLERANCE, Monitor.NONE).isEmpty());
	}

	@Test
	void stripsKeepOffTheParts() {
		Random random = new Random(137);
		for (int i = 0; i < 60; i++) {
			Region region = region(Shapes.blob(random, 4, new Point(0, 0), 10), Shapes.circle(15, 5, 4),
					Shapes.circle(15, 5, 3).reversed());
			double spacing = 1 + 5 * random.nextDouble();
			double clearance = random.nextBoolean() ? 0 : 0.8;
			List<Contour> lines = new Weeding(2, random.nextBoolean(), spacing, clearance).of(region, TOLERANCE,
					Monitor.NONE);
			Geometry body = Polygons.of(region, TOLERANCE.mm() / 4);
			for (Contour line : lines) {
				if (!line.isClosed() && line.start().y() == line.end().y()) {
					double distance = line(line).distance(body);
					assertTrue(distance >= clearance - TOLERANCE.mm(), "number " + i + ": " + distance);
				}
				assertTrue(clearance > 0 || line.isClosed() || line(line).intersection(body).getLength() < TOLERANCE.mm() * 4,
						"number " + i + " through a part");
			}
			double[] heights = lines.stream().filter(l -> !l.isClosed() && l.start().y() == l.end().y())
					.mapToDouble(l -> l.start().y()).distinct().sorted().toArray();
			for (int k = 1; k < heights.length; k++) {
				assertTrue(heights[k] - heights[k - 1] <= spacing + 1e-9, "number " + i);
			}
		}
	}
}
