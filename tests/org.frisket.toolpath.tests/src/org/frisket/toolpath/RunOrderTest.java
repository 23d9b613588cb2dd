package org.frisket.toolpath;

import static org.frisket.toolpath.Drawings.ARCS;
import static org.frisket.toolpath.Drawings.BLADE;
import static org.frisket.toolpath.Drawings.OTHER;
import static org.frisket.toolpath.Drawings.PEN;
import static org.frisket.toolpath.Drawings.plan;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.toolpath.RunChoices.Direction;
import org.frisket.toolpath.RunChoices.PassOrder;
import org.frisket.toolpath.RunChoices.Tabs;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** What has to come before what, checked by JTS; and which tool when. */
class RunOrderTest {

	private static final GeometryFactory FACTORY = new GeometryFactory();

	/** Nested shapes, cut by two tools, some open, in one to three passes, with and without tabs and shared edges. */
	@Test
	void nothingIsCutLoose() {
		SplittableRandom random = new SplittableRandom(1);
		for (int run = 0; run < 24; run++) {
			List<Line> lines = new ArrayList<>();
			for (int i = 0; i < 6; i++) {
				nested(random, 50 + 100 * (i % 3), 50 + 100 * (i / 3), 48, 3, "p" + i, run % 3 == 0, lines);
			}
			Collections.shuffle(lines, new Random(run));
			RunChoices choices = new RunChoices(0.5, 0.5, run % 2 == 0, run % 4 == 0 ? new Tabs(3, 0.4, 10) : Tabs.NONE,
					run % 5 == 0 ? PassOrder.SHEET : PassOrder.PART, 0, 1, Direction.EITHER, 500, run);
			assertOrder(lines, plan(lines, ARCS, choices));
		}
	}

	private static void nested(SplittableRandom random, double x, double y, double room, int deep, String part,
			boolean twoTools, List<Line> lines) {
		String tool = twoTools && random.nextInt(4) == 0 ? OTHER : BLADE;
		Contour contour = random.nextInt(3) == 0 && deep < 3
				? Drawings.polyline(x - room / 2, y, x, y + room / 2 * random.nextDouble(), x + room / 2, y)
				: random.nextBoolean() ? Drawings.jagged(random, x, y, 0.75 * room, room, 5 + random.nextInt(9))
						: Drawings.smooth(random, x, y, 0.75 * room, 0.9 * room, 6);
		lines.add(new Line(part + "." + lines.size(), "job" + lines.size() % 3, part, contour, Stage.CUT, tool,
				1 + random.nextInt(3)));
		if (deep > 0 && contour.isClosed()) {
			int many = 2 + random.nextInt(2);
			for (int i = 0; i < many; i++) {
				double a = 2 * Math.PI * i / many;
				nested(random, x + 0.3 * room * Math.cos(a), y + 0.3 * room * Math.sin(a), 0.24 * room, deep - 1, part,
						twoTools, lines);
			}
		}
	}

	/** The last pass of what lies within comes before the last pass of what encloses it, by whatever tool. */
	private static void assertOrder(List<Line> lines, Run run) {
		List<Stroke> strokes = run.strokes().toList();
		int checked = 0;
		for (Line outer : lines) {
			if (!outer.contour().isClosed()) {
				continue;
			}
			var area = PreparedGeometryFactory.prepare(shape(outer.contour()));
			int first = strokes.size();
			for (int i = 0; i < strokes.size(); i++) {
				if (strokes.get(i).line().id().equals(outer.id()) && strokes.get(i).pass() == outer.passes()) {
					first = Math.min(first, i);
				}
			}
			assertTrue(first < strokes.size() || outer.contour().isEmpty());
			for (Line inner : lines) {
				if (inner != outer && area.covers(shape(inner.contour())) && size(inner) < size(outer)) {
					checked++;
					for (int i = first; i < strokes.size(); i++) {
						assertTrue(!strokes.get(i).line().id().equals(inner.id()),
								inner.id() + " is cut loose by " + outer.id());
					}
				}
			}
		}
		assertTrue(checked > 10, "checked: " + checked);
	}

	private static double size(Line line) {
		return line.contour().bounds().width() * line.contour().bounds().height();
	}

	static Geometry shape(Contour contour) {
		List<Coordinate> ring = new ArrayList<>();
		for (Point point : contour.flattened(1e-3)) {
			ring.add(new Coordinate(point.x(), point.y()));
		}
		if (!contour.isClosed()) {
			return FACTORY.createLineString(ring.toArray(Coordinate[]::new));
		}
		ring.add(ring.get(0));
		return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
	}

	/** Labels side by side with a hole each: all holes come before the edges that the labels share. */
	@Test
	void sharedEdgesComeAfterAllThatTheyBound() {
		List<Line> lines = new ArrayList<>();
		for (int i = 0; i < 12; i++) {
			double x = 20 * (i % 4);
			double y = 10 * (i / 4);
			lines.add(new Line("label" + i, "job" + i % 2, "part" + i, Drawings.box(x, y, 20, 10), Stage.CUT, BLADE, 1));
			lines.add(new Line("hole" + i, "job" + i % 2, "part" + i, Drawings.circle(x + 4, y + 5, 2), Stage.CUT, BLADE, 1));
		}
		Collections.shuffle(lines, new Random(5));
		RunChoices once = new RunChoices(0, 0, true, Tabs.NONE, PassOrder.PART, 0, 1, Direction.EITHER, 1000, 1);
		Run run = plan(lines, ARCS, once);
		List<Stroke> strokes = run.strokes().toList();
		int holes = 0;
		double length = 0;
		for (Stroke stroke : strokes) {
			if (stroke.line().id().startsWith("hole")) {
				holes++;
				assertEquals(0, length, "a hole after an edge");
			} else {
				length += stroke.length();
			}
		}
		assertEquals(12, holes);
		assertEquals(4 * 80 + 5 * 30, length, 1e-6);
		// within the sheet all edges are still there for whoever asks which line they are of
		Line first = lines.stream().filter(l -> l.id().startsWith("label")).findFirst().orElseThrow();
		assertEquals(60, strokes.stream().filter(s -> s.line().id().equals(first.id())).mapToDouble(Stroke::length).sum(),
				1e-6);
	}

	/** A cut that crosses the border of its part has no inside and outside, but it belongs to the part. */
	@Test
	void theOuterCutOfAPartIsTheLast() {
		Line outer = new Line("outer", "job", "p", Drawings.polygon(20, 0, 40, 20, 20, 40, 0, 20), Stage.CUT, BLADE, 1);
		Line slit = new Line("slit", "job", "p", Drawings.polyline(32, 32, 20, 20), Stage.CUT, OTHER, 1);
		Run run = plan(List.of(outer, slit), ARCS, Drawings.shuffled(100));
		assertEquals(List.of("slit", "outer"), run.strokes().map(s -> s.line().id()).toList());
	}

	@Test
	void whatIsLeftOfASharedLineGetsItsShareOfTheTabs() {
		List<Line> lines = List.of(new Line("a", "job", "a", Drawings.box(5, 5, 20, 10), Stage.CUT, BLADE, 1),
				new Line("b", "job", "b", Drawings.box(25, 5, 20, 10), Stage.CUT, BLADE, 1));
		RunChoices once = new RunChoices(0, 0, true, new Tabs(4, 0.5, 10), PassOrder.PART, 0, 1, Direction.EITHER, 0, 1);
		// four of the first; of the other one 50 mm of 60 are left, and three
		double length = plan(lines, ARCS, once).strokes().mapToDouble(Stroke::length).sum();
		assertEquals(110 - 7 * 0.5, length, 1e-9);
	}

	@Test
	void stagesInTheirOrderAndToolsAreSeldomChanged() {
		List<Line> lines = new ArrayList<>();
		int x = 0;
		for (Stage stage : List.of(Stage.CUT, Stage.DRAW, Stage.KISS_CUT, Stage.CREASE, Stage.PERFORATE)) {
			for (String tool : List.of(BLADE, OTHER, PEN)) {
				if (stage != Stage.PERFORATE || !tool.equals(PEN)) {
					lines.add(new Line("l" + x, "job", "", Drawings.box(10 * x, 0, 5, 5), stage, tool, 1));
					lines.add(new Line("m" + x, "job", "", Drawings.box(10 * x++, 10, 5, 5), stage, tool, 1));
				}
			}
		}
		Run run = plan(lines, ARCS, RunChoices.plain());
		List<Stage> stages = run.legs().stream().map(Leg::stage).toList();
		assertEquals(stages.stream().sorted().toList(), stages);
		assertEquals(14, stages.size());
		// as many as there are tools more than one in each stage: none is changed between stages
		int changes = 0;
		for (int leg = 0; leg < run.legs().size(); leg++) {
			changes += run.stopsBefore(leg) ? 1 : 0;
		}
		assertEquals(2 + 2 + 1 + 2 + 2, changes);
	}

	/** A tool that works both within and around what another works is put in twice, and no more. */
	@Test
	void aToolInBetween() {
		List<Line> lines = List.of(new Line("outer", "j", "a", Drawings.box(0, 0, 40, 40), Stage.CUT, BLADE, 1),
				new Line("middle", "j", "b", Drawings.box(5, 5, 30, 30), Stage.CUT, OTHER, 1),
				new Line("inner", "j", "c", Drawings.box(10, 10, 5, 5), Stage.CUT, BLADE, 1),
				new Line("beside", "j", "d", Drawings.box(50, 10, 5, 5), Stage.CUT, OTHER, 1));
		Run run = plan(lines, ARCS, RunChoices.plain());
		assertEquals(List.of(BLADE, OTHER, BLADE), run.legs().stream().map(Leg::tool).toList());
		assertEquals(Set.of("middle", "beside"),
				new HashSet<>(run.legs().get(1).strokes().stream().map(s -> s.line().id()).toList()));
	}

	@Test
	void alwaysTheSame() {
		List<Line> lines = new ArrayList<>();
		SplittableRandom random = new SplittableRandom(3);
		for (int i = 0; i < 60; i++) {
			nested(random, 300 * random.nextDouble(), 300 * random.nextDouble(), 10, 1, "p" + i, true, lines);
		}
		RunChoices choices = new RunChoices(0.5, 0.5, true, new Tabs(2, 0.5, 5), PassOrder.SHEET, 1, 0.5, Direction.CLOCKWISE,
				2000, 7);
		assertEquals(plan(lines, ARCS, choices), plan(lines, ARCS, choices));
	}

	/** A frame and what it holds begin where the way passes. */
	@Test
	void startsAreNearTheWay() {
		List<Line> lines = new ArrayList<>();
		for (int i = 0; i < 8; i++) {
			lines.add(new Line("c" + i, "job", "", Drawings.circle(20 + 25 * i, 20, 10), Stage.DRAW, PEN, 1));
		}
		Run run = plan(lines, ARCS, Drawings.shuffled(100));
		// out along one side and back: 195 mm each way would be the least for middles; circles are entered on the way
		double travel = Drawings.travel(run, ARCS.home());
		assertTrue(travel <= 2 * Math.hypot(195, 20), "travel " + travel);
		double[] ys = run.strokes().mapToDouble(s -> s.start().y()).toArray();
		assertTrue(Arrays.stream(ys).allMatch(y -> y < 20.5), Arrays.toString(ys));
	}
}
