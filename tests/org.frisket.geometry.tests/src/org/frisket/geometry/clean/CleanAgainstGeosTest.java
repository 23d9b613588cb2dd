package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Geos;
import org.frisket.geometry.Letters;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.junit.jupiter.api.Test;

/**
 * What is cleaned covers what GEOS makes of the same rings: it cuts them where they cross, makes faces of the pieces, and
 * the winding at a place in each face, counted by a ray, tells which are filled.
 */
class CleanAgainstGeosTest {

	private static final Tolerance TOLERANCE = new Tolerance(0.02);
	private static final int RANDOM = 500;
	private static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789&?!@#%$";

	/** Prints the area in which both differ, and that of what GEOS fills. */
	private static final String ASKED = """
			import sys, json
			from shapely.geometry import LineString, Polygon, Point
			from shapely.ops import unary_union, polygonize
			def winding(rings, x, y):
			    w = 0
			    for r in rings:
			        for (ax, ay), (bx, by) in zip(r, r[1:] + r[:1]):
			            if (ay <= y) != (by <= y) and ax + (y - ay) / (by - ay) * (bx - ax) > x:
			                w += 1 if by > ay else -1
			    return w
			def filled(rings, even):
			    lines = unary_union([LineString(r + r[:1]) for r in rings])
			    faces = []
			    for f in polygonize(lines):
			        p = f.representative_point()
			        w = winding(rings, p.x, p.y)
			        if w % 2 if even else w:
			            faces.append(f)
			    return unary_union(faces)
			for line in sys.stdin:
			    rings, even, found = json.loads(line)
			    a, b = filled(rings, even), filled(found, True) if found else Polygon()
			    print(a.symmetric_difference(b).area, a.area)
			""";

	private record Case(String name, List<Contour> contours, FillRule rule, Region region) {

		static Case of(String name, Outline outline, FillRule rule) {
			Region region = new OutlineCleaner().clean(outline, rule, TOLERANCE, Monitor.NONE).region();
			return new Case(name, outline.contours(), rule, region);
		}

		String json() {
			return "[" + Geos.json(contours, 1e-3) + "," + (rule == FillRule.EVEN_ODD) + ","
					+ Geos.json(region.contours(), 1e-3) + "]";
		}

		double perimeter() {
			return contours.stream().mapToDouble(Contour::length).sum();
		}
	}

	private static void check(List<Case> cases) throws Exception {
		List<double[]> answers = Geos.answers(ASKED, cases.stream().map(Case::json).toList());
		double filled = 0;
		for (int i = 0; i < cases.size(); i++) {
			Case each = cases.get(i);
			double most = (TOLERANCE.mm() + 2e-3) * each.perimeter();
			assertTrue(answers.get(i)[0] <= most, each.name() + " differs by " + answers.get(i)[0] + ", allowed " + most);
			assertEquals(answers.get(i)[1], each.region().area(), most, each.name());
			filled += answers.get(i)[1];
		}
		assertTrue(filled > cases.size(), "something is filled: " + filled);
	}

	@Test
	void randomOutlinesCoverWhatGeosSays() throws Exception {
		assumeTrue(Geos.isInstalled(), "python3-shapely is not installed");
		Random random = new Random(71);
		List<Case> cases = new ArrayList<>();
		for (int i = 0; i < RANDOM; i++) {
			List<Contour> contours = new ArrayList<>();
			for (int k = 1 + random.nextInt(3); k > 0; k--) {
				contours.add(switch (random.nextInt(5)) {
				case 0 -> Shapes.latticePolygon(random, 3 + random.nextInt(6), 9);
				case 1 -> Shapes.rectangle(random.nextInt(9), random.nextInt(9), 1 + random.nextInt(5), 1 + random.nextInt(5));
				case 2 -> Shapes.blob(random, 3, Shapes.point(random, 12), 1 + 4 * random.nextDouble());
				case 3 -> Shapes.scribble(random, 1 + random.nextInt(3), 12);
				default -> Shapes.polygon(random, 3 + random.nextInt(6), 12);
				});
			}
			cases.add(Case.of("number " + i, new Outline(contours),
					random.nextBoolean() ? FillRule.NON_ZERO : FillRule.EVEN_ODD));
		}
		check(cases);
	}

	@Test
	void lettersCoverWhatGeosSays() throws Exception {
		assumeTrue(Geos.isInstalled(), "python3-shapely is not installed");
		List<Case> cases = new ArrayList<>();
		for (String name : List.of("DejaVu Sans", "DejaVu Serif")) {
			Font font = new Font(name, Font.PLAIN, 20);
			assumeTrue(font.getFamily().equals(name), "fonts-dejavu is not installed");
			for (int i = 0; i + 1 < LETTERS.length(); i++) {
				// two letters pushed into one another, and one turned round
				Outline one = letter(font, LETTERS.charAt(i));
				Outline other = letter(font, LETTERS.charAt(i + 1)).transformed(Transform.translation(i % 7, 0.3));
				Outline both = i % 3 == 0 ? one
						: i % 3 == 1 ? one.plus(other)
								: one.plus(new Outline(other.contours().stream().map(Contour::reversed).toList()));
				cases.add(Case.of(name + " " + LETTERS.charAt(i), both, i % 2 == 0 ? FillRule.NON_ZERO : FillRule.EVEN_ODD));
			}
		}
		assertTrue(cases.size() >= 100);
		check(cases);
	}

	private static Outline letter(Font font, char letter) {
		return Letters.outline(font.createGlyphVector(new FontRenderContext(null, true, true), new char[] { letter })
				.getOutline().getPathIterator(null));
	}
}
