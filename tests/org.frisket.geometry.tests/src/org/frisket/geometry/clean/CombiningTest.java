package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Geos;
import org.frisket.geometry.Letters;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.junit.jupiter.api.Test;

class CombiningTest {

	private static final Tolerance TOLERANCE = Tolerance.DEFAULT;
	private static final double FINE = TOLERANCE.mm() / 10;

	/** A line: the operands' pieces, then ours for each rule; answered by how much differs from GEOS's, in mm². */
	private static final String ASKED = """
			import sys, json
			from functools import reduce
			from shapely.geometry import Polygon
			from shapely.ops import unary_union
			def region(pieces):
			    return unary_union([Polygon(p[0], p[1:]).buffer(0) for p in pieces])
			for line in sys.stdin:
			    operands, ours = json.loads(line)
			    r = [region(o) for o in operands]
			    theirs = [unary_union(r), r[0].difference(unary_union(r[1:])),
			        reduce(lambda a, b: a.intersection(b), r), reduce(lambda a, b: a.symmetric_difference(b), r)]
			    print(*[t.symmetric_difference(region(o)).area for t, o in zip(theirs, ours)])
			""";

	private static Region clean(Outline outline) {
		return new OutlineCleaner().clean(outline, FillRule.NON_ZERO, TOLERANCE, Monitor.NONE).region();
	}

	private static Region combined(Combining rule, List<Region> regions) {
		return rule.of(regions, TOLERANCE, Monitor.NONE);
	}

	private static Region random(Random random) {
		return clean(Outline.of(switch (random.nextInt(4)) {
		case 0 -> Shapes.rectangle(random.nextInt(9), random.nextInt(9), 1 + random.nextInt(9), 1 + random.nextInt(9));
		case 1 -> Shapes.circle(10 * random.nextDouble(), 10 * random.nextDouble(), 1 + 5 * random.nextDouble());
		case 2 -> Shapes.blob(random, 3 + random.nextInt(4), Shapes.point(random, 12), 6);
		default -> Shapes.scribble(random, 2 + random.nextInt(3), 14);
		}));
	}

	private static Region letter(Random random) throws Exception {
		File font = random.nextBoolean() ? Letters.SANS : Letters.SERIF;
		String letters = "ABDGQRSabdegkms&@8%";
		int at = random.nextInt(letters.length());
		return clean(Letters.word(font, letters.substring(at, at + 1), 20 + random.nextInt(30), 0)
				.transformed(Transform.rotation(random.nextDouble() - 0.5))
				.transformed(Transform.translation(10 * random.nextDouble(), 10 * random.nextDouble())));
	}

	private static void assertAsGeosSays(List<List<Region>> cases) throws Exception {
		List<String> questions = new ArrayList<>();
		for (List<Region> operands : cases) {
			List<String> ours = new ArrayList<>();
			for (Combining rule : Combining.values()) {
				Region result = combined(rule, operands);
				RegionAssert.assertClean(result, TOLERANCE.mm(), rule + " number " + questions.size());
				ours.add(Geos.json(result, FINE));
			}
			questions.add(operands.stream().map(each -> Geos.json(each, FINE)).collect(Collectors.joining(",", "[[", "],["))
					+ String.join(",", ours) + "]]");
		}
		List<double[]> off = Geos.answers(ASKED, questions);
		for (int i = 0; i < cases.size(); i++) {
			double perimeter = cases.get(i).stream().mapToDouble(Region::perimeter).sum();
			for (Combining rule : Combining.values()) {
				double differs = off.get(i)[rule.ordinal()];
				assertTrue(differs < TOLERANCE.mm() * perimeter, rule + " number " + i + ": " + differs + " mm²");
			}
		}
	}

	@Test
	void areWhatGeosSaysOfShapes() throws Exception {
		assumeTrue(Geos.isInstalled(), "python3-shapely is not installed");
		Random random = new Random(71);
		List<List<Region>> cases = new ArrayList<>();
		for (int i = 0; i < 500; i++) {
			cases.add(random.ints(2 + random.nextInt(3)).mapToObj(any -> random(random)).toList());
		}
		assertAsGeosSays(cases);
	}

	@Test
	void areWhatGeosSaysOfLetters() throws Exception {
		assumeTrue(Geos.isInstalled() && Letters.SANS.exists() && Letters.SERIF.exists(), "not installed");
		Random random = new Random(73);
		List<List<Region>> cases = new ArrayList<>();
		for (int i = 0; i < 100; i++) {
			cases.add(List.of(letter(random), letter(random)));
		}
		assertAsGeosSays(cases);
	}

	@Test
	void orderAndGroupingDoNotMatterWhereTheyShouldNot() {
		Random random = new Random(79);
		for (int i = 0; i < 100; i++) {
			Region a = random(random);
			Region b = random(random);
			Region c = random(random);
			double slack = 2 * TOLERANCE.mm() * (a.perimeter() + b.perimeter() + c.perimeter());
			for (Combining rule : List.of(Combining.UNITE, Combining.INTERSECT, Combining.EXCLUDE)) {
				double all = combined(rule, List.of(a, b, c)).area();
				assertEquals(all, combined(rule, List.of(c, a, b)).area(), slack);
				assertEquals(all, combined(rule, List.of(combined(rule, List.of(a, b)), c)).area(), slack);
				assertEquals(all, combined(rule, List.of(a, combined(rule, List.of(b, c)))).area(), slack);
			}
			assertEquals(combined(Combining.SUBTRACT, List.of(a, b, c)).area(), combined(Combining.SUBTRACT,
					List.of(combined(Combining.SUBTRACT, List.of(a, b)), c)).area(), slack);
		}
	}

	@Test
	void curvesAreTheOperandsOwn() {
		Region one = clean(Outline.of(Shapes.circle(0, 0, 10)));
		Region other = clean(Outline.of(Shapes.circle(9, 0, 10)));
		Set<Segment> own = new HashSet<>();
		List.of(one, other).forEach(r -> r.contours().forEach(c -> own.addAll(c.segments())));
		for (Combining rule : Combining.values()) {
			Region result = combined(rule, List.of(one, other));
			long kept = result.contours().stream().flatMap(c -> c.segments().stream())
					.filter(s -> own.contains(s) || own.contains(s.reversed())).count();
			// each circle is cut in both curves of one half; its other half lies within the rule or does not
			assertEquals(switch (rule) {
			case UNITE, EXCLUDE -> 4;
			case SUBTRACT -> 2;
			case INTERSECT -> 0;
			}, kept, rule.name());
			assertTrue(result.nodeCount() <= 2 * (8 + 4), rule.name());
		}
	}

	@Test
	void oneRegionIsItselfAndNoneIsNothing() {
		Region one = clean(Outline.of(Shapes.circle(0, 0, 10)));
		for (Combining rule : Combining.values()) {
			assertSame(one, combined(rule, List.of(one)));
			assertTrue(combined(rule, List.of()).isEmpty());
		}
		assertTrue(combined(Combining.INTERSECT, List.of(one, Region.EMPTY)).isEmpty());
		assertTrue(combined(Combining.SUBTRACT, List.of(Region.EMPTY, one)).isEmpty());
		assertEquals(one, combined(Combining.SUBTRACT, List.of(one, Region.EMPTY)));
		assertTrue(combined(Combining.EXCLUDE, List.of(one, one)).isEmpty());
	}

	/** Shapes whose edges lie on each other everywhere. */
	@Test
	void sharedEdgesLeaveNoSlivers() {
		Contour square = Shapes.rectangle(0, 0, 10, 10);
		Region left = clean(Outline.of(Shapes.rectangle(0, 0, 5, 10)));
		Region whole = clean(Outline.of(square));
		assertEquals(left, combined(Combining.INTERSECT, List.of(whole, left)));
		assertEquals(50, combined(Combining.SUBTRACT, List.of(whole, left)).area(), 1e-9);
		assertEquals(4, combined(Combining.SUBTRACT, List.of(whole, left)).nodeCount());
		assertEquals(100, combined(Combining.UNITE, List.of(left, whole)).area(), 1e-9);
		assertEquals(40, combined(Combining.UNITE, List.of(left, whole)).perimeter(), 1e-9);
	}
}
