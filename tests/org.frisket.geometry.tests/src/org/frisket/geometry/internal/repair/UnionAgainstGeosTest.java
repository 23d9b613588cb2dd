package org.frisket.geometry.internal.repair;

import static org.frisket.geometry.internal.repair.Courses.TOLERANCE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Geos;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.clean.RegionBoolean;
import org.frisket.geometry.repair.Artwork;
import org.junit.jupiter.api.Test;

/** What the library GEOS, asked through Debian's python3-shapely, says of the same shapes. */
class UnionAgainstGeosTest {

	private static final int COUNT = 300;

	/** A case a line: rings of the first and the second, as lists of coordinates. */
	private static final String ASKED = """
			import sys, json
			from shapely.geometry import Polygon
			from shapely.ops import unary_union
			for line in sys.stdin:
			    a, b = [unary_union([Polygon(r).buffer(0) for r in rings]) for rings in json.loads(line)]
			    u = a.union(b)
			    print(u.area, a.intersection(b).area, a.difference(b).area, a.symmetric_difference(b).area, u.length)
			""";

	private record Case(List<Contour> one, List<Contour> other) {

		static Case of(Random random) {
			return new Case(shapes(random), shapes(random));
		}

		private static List<Contour> shapes(Random random) {
			List<Contour> shapes = new ArrayList<>();
			for (int i = 1 + random.nextInt(3); i > 0; i--) {
				shapes.add(random.nextBoolean()
						? Shapes.rectangle(random.nextInt(9), random.nextInt(9), 1 + random.nextInt(6), 1 + random.nextInt(6))
						: Shapes.circle(random.nextInt(9), random.nextInt(9), 1 + 3 * random.nextDouble()));
			}
			return shapes;
		}

		String json() {
			return "[" + Geos.json(one, 1e-5) + "," + Geos.json(other, 1e-5) + "]";
		}

		Artwork artwork() {
			List<Artwork.Area> areas = new ArrayList<>();
			one.forEach(c -> areas.add(new Artwork.Area(Outline.of(c), FillRule.NON_ZERO)));
			other.forEach(c -> areas.add(new Artwork.Area(Outline.of(c.reversed()), FillRule.EVEN_ODD)));
			return new Artwork(areas, List.of());
		}
	}

	private static Region region(List<Contour> contours) {
		return new OutlineCleaner().clean(new Outline(contours), FillRule.NON_ZERO, TOLERANCE, Monitor.NONE).region();
	}

	@Test
	void areasAreWhatGeosSays() throws Exception {
		assumeTrue(Geos.isInstalled(), "python3-shapely is not installed");
		Random random = new Random(43);
		List<Case> cases = new ArrayList<>();
		for (int i = 0; i < COUNT; i++) {
			cases.add(Case.of(random));
		}
		List<double[]> answers = Geos.answers(ASKED, cases.stream().map(Case::json).toList());
		RegionBoolean op = new RegionBoolean();
		for (int i = 0; i < COUNT; i++) {
			double[] expected = answers.get(i);
			Region one = region(cases.get(i).one());
			Region other = region(cases.get(i).other());
			double slack = TOLERANCE.mm() * (one.perimeter() + other.perimeter()) / 10;
			String name = "number " + i;
			assertEquals(expected[0], Courses.area(Courses.run(cases.get(i).artwork()).artwork()), slack, name);
			assertEquals(expected[1], op.intersect(one, other, TOLERANCE, Monitor.NONE).area(), slack, name);
			assertEquals(expected[2], op.subtract(one, other, TOLERANCE, Monitor.NONE).area(), slack, name);
			assertEquals(expected[3], op.xor(one, other, TOLERANCE, Monitor.NONE).area(), slack, name);
			assertEquals(expected[4], Courses.length(Courses.run(cases.get(i).artwork()).artwork()),
					expected[4] * 0.001 + slack, name);
		}
	}
}
