package org.frisket.geometry.internal.repair;

import static org.frisket.geometry.internal.repair.Courses.TOLERANCE;
import static org.frisket.geometry.internal.repair.Courses.area;
import static org.frisket.geometry.internal.repair.Courses.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Artwork.Area;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairCourse;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;

/** Two thousand artworks with all that goes wrong in files, with fixed seeds. */
class RepairPropertiesTest {

	private static final int COUNT = 2000;
	private static final double FAR = 1e6;
	private static final GeometryFactory JTS = new GeometryFactory();

	static Artwork artwork(Random random) {
		Outline shapes = shapes(random);
		List<Area> areas = new ArrayList<>();
		List<Contour> lines = new ArrayList<>();
		for (Contour contour : shapes.contours()) {
			switch (random.nextInt(5)) {
			case 0 -> areas.add(new Area(Outline.of(contour), random.nextBoolean() ? FillRule.NON_ZERO : FillRule.EVEN_ODD));
			case 1 -> lines.add(contour);
			case 2 -> areas.add(new Area(Outline.of(Contour.polygon(contour.flattened(2e-4))), FillRule.NON_ZERO));
			case 3 -> lines.addAll(exploded(random, contour));
			default -> {
				lines.add(contour);
				lines.add(contour.transformed(Transform.translation(jitter(random), jitter(random))));
			}
			}
		}
		java.util.Collections.shuffle(lines, random);
		Artwork artwork = new Artwork(areas, lines);
		if (random.nextInt(4) == 0) {
			Transform move = Transform.translation(random.nextBoolean() ? FAR : -FAR, random.nextBoolean() ? FAR : -FAR);
			artwork = new Artwork(areas.stream().map(a -> new Area(a.outline().transformed(move), a.rule())).toList(),
					lines.stream().map(line -> line.transformed(move)).toList());
		}
		return artwork;
	}

	private static Outline shapes(Random random) {
		List<Contour> contours = new ArrayList<>();
		for (int i = 1 + random.nextInt(4); i > 0; i--) {
			contours.add(switch (random.nextInt(4)) {
			case 0 -> Shapes.latticePolygon(random, 3 + random.nextInt(6), 9);
			case 1 -> Shapes.rectangle(random.nextInt(9), random.nextInt(9), 1 + random.nextInt(5), 1 + random.nextInt(5));
			case 2 -> Shapes.blob(random, 3, Shapes.point(random, 12), 1 + 4 * random.nextDouble());
			default -> Shapes.polygon(random, 3 + random.nextInt(4), 12);
			});
		}
		return new Outline(contours.stream().filter(c -> c.length() > 0).map(RepairPropertiesTest::withoutPoints).toList());
	}

	private static Contour withoutPoints(Contour contour) {
		return Contour.closed(contour.segments().stream().filter(s -> s.length() > 0).toList());
	}

	/** From a billionth to a tenth of the tolerance. */
	private static double jitter(Random random) {
		return Math.pow(10, -9 + 6.3 * random.nextDouble()) * random.nextGaussian();
	}

	/** Single segments that hardly meet, turned at random, one now and then missing or doubled. */
	private static List<Contour> exploded(Random random, Contour contour) {
		List<Contour> loose = new ArrayList<>();
		for (Segment segment : contour.segments()) {
			Segment moved = segment.withEnds(segment.start().plus(new Point(jitter(random), jitter(random))),
					segment.end().plus(new Point(jitter(random), jitter(random))));
			if (random.nextInt(12) > 0) {
				loose.add(Contour.open(List.of(random.nextBoolean() ? moved : moved.reversed())));
			}
			if (random.nextInt(6) == 0) {
				Point end = moved.start().towards(moved.end(), 1.5);
				loose.add(Contour.open(List.of(moved instanceof Line ? new Line(moved.start(), end) : moved)));
			}
		}
		return loose;
	}

	@Test
	void repairIsWithinTheToleranceValidAndDoneOnce() {
		Random random = new Random(41);
		int mended = 0;
		for (int i = 0; i < COUNT; i++) {
			Artwork source = artwork(random);
			String name = "number " + i;
			RepairCourse.Proved proved = Courses.recommended().prove(source, TOLERANCE, Monitor.NONE);
			Mended result = proved.mended();
			mended += result.mends().size();
			assertTrue(proved.movement().isWithin(TOLERANCE), () -> name + " moved by " + proved.movement());
			assertValid(result.artwork(), name);
			assertTrue(result.mends().stream().allMatch(m -> m.place().isFinite() && m.amount() >= 0), name);
			if (i % 8 == 0) {
				assertEquals(result.artwork(), run(source).artwork(), name + ": not the same again");
			}
			assertEquals(result.artwork(), run(result.artwork()).artwork(), name + ": not done at once");
		}
		assertTrue(mended > 5 * COUNT, "there was something to mend: " + mended);
	}

	private static void assertValid(Artwork artwork, String name) {
		assertTrue(artwork.areas().size() <= 1, name);
		List<LinearRing> rings = new ArrayList<>();
		for (Area area : artwork.areas()) {
			for (Contour contour : area.outline().contours()) {
				assertTrue(contour.isClosed(), name);
				rings.add(Polygons.ring(contour, 1e-4));
			}
		}
		for (int i = 0; i < rings.size(); i++) {
			assertTrue(rings.get(i).isSimple(), name + ": a contour crosses itself");
			for (int j = 0; j < i; j++) {
				assertTrue(rings.get(i).disjoint(rings.get(j)), name + ": contours meet");
			}
		}
	}

	@Test
	void stepsThatAreOffAtFirstKeepThePromisesToo() {
		Random random = new Random(44);
		RepairCourse course = Courses.with(Map.of("gap", "0.06mm", "level", "0.02mm", "doubled", "partly", "reach", "0.1mm"));
		for (int i = 0; i < COUNT / 20; i++) {
			Artwork source = artwork(random);
			String name = "number " + i;
			RepairCourse.Proved proved = course.prove(source, TOLERANCE, Monitor.NONE);
			assertTrue(proved.movement().isWithin(TOLERANCE), () -> name + " moved by " + proved.movement());
			Artwork result = proved.mended().artwork();
			assertValid(result, name);
			assertEquals(result, course.run(result, TOLERANCE, Monitor.NONE).artwork(), name + ": not done at once");
		}
	}

	@Test
	void filledAreaStaysWhatItWas() {
		Random random = new Random(42);
		for (int i = 0; i < COUNT / 8; i++) {
			List<Area> areas = shapes(random).contours().stream().map(c -> new Area(Outline.of(c), FillRule.NON_ZERO)).toList();
			Artwork source = new Artwork(areas, List.of());
			Mended result = run(source);
			double gone = result.mends().stream().filter(m -> m.kind().endsWith("-removed") && m.unit().equals("mm2"))
					.mapToDouble(Mend::amount).sum();
			Geometry union = JTS.buildGeometry(areas.stream()
					.map(a -> (Geometry) Polygons.factory().createPolygon(Polygons.ring(a.outline().contours().get(0), 1e-4))
							.buffer(0)).toList());
			double expected = nonZero(areas);
			assertEquals(expected, area(result.artwork()), gone + TOLERANCE.mm() * union.getLength() + 1e-3, "number " + i);
		}
	}

	/** By scan lines, which have nothing in common with what is tested. */
	private static double nonZero(List<Area> areas) {
		double step = 0.01;
		double sum = 0;
		List<LinearRing> rings = areas.stream().map(a -> Polygons.ring(a.outline().contours().get(0), 1e-4)).toList();
		for (double y = -10 + step / 3; y < 30; y += step) {
			sum += step * covered(rings, y);
		}
		return sum;
	}

	private record Span(double from, double to) {
	}

	private static double covered(List<LinearRing> rings, double y) {
		List<Span> spans = new ArrayList<>();
		for (LinearRing ring : rings) {
			List<double[]> hits = new ArrayList<>();
			Coordinate[] c = ring.getCoordinates();
			for (int i = 1; i < c.length; i++) {
				if (c[i - 1].y > y != c[i].y > y) {
					double x = c[i - 1].x + (y - c[i - 1].y) / (c[i].y - c[i - 1].y) * (c[i].x - c[i - 1].x);
					hits.add(new double[] { x, c[i].y > y ? 1 : -1 });
				}
			}
			hits.sort((a, b) -> Double.compare(a[0], b[0]));
			int winding = 0;
			for (int i = 0; i + 1 < hits.size(); i++) {
				winding += (int) hits.get(i)[1];
				if (winding != 0) {
					spans.add(new Span(hits.get(i)[0], hits.get(i + 1)[0]));
				}
			}
		}
		spans.sort((a, b) -> Double.compare(a.from, b.from));
		double sum = 0;
		double reached = Double.NEGATIVE_INFINITY;
		for (Span span : spans) {
			sum += Math.max(0, span.to - Math.max(reached, span.from));
			reached = Math.max(reached, span.to);
		}
		return sum;
	}
}
