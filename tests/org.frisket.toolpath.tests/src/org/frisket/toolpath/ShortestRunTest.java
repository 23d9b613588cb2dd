package org.frisket.toolpath;

import static org.frisket.toolpath.Drawings.ARCS;
import static org.frisket.toolpath.Drawings.PEN;
import static org.frisket.toolpath.Drawings.plan;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/** The travel of small sheets, by trying all orders. */
class ShortestRunTest {

	/** With the places at which lines are begun and left as they are, no other order is shorter by 1 %. */
	@Test
	void smallSheetsAgainstAllOrders() {
		SplittableRandom random = new SplittableRandom(9);
		for (int run = 0; run < 60; run++) {
			int n = 3 + random.nextInt(5);
			List<Line> lines = new ArrayList<>();
			for (int i = 0; i < n; i++) {
				double x = 10 + 180 * random.nextDouble();
				double y = 10 + 130 * random.nextDouble();
				Contour contour = switch (random.nextInt(3)) {
				case 0 -> Drawings.polyline(x, y, x + 30 * random.nextDouble(), y + 30 * random.nextDouble());
				case 1 -> Drawings.box(x, y, 5 + 20 * random.nextDouble(), 5 + 20 * random.nextDouble());
				default -> Drawings.circle(x, y, 2 + 6 * random.nextDouble());
				};
				lines.add(new Line("l" + i, "job", "", contour, Stage.DRAW, PEN, 1));
			}
			List<Stroke> strokes = plan(lines, ARCS, RunChoices.plain()).strokes().toList();
			double travel = Drawings.travel(new Run(List.of(new Leg(Stage.DRAW, PEN, strokes))), ARCS.home());
			double best = shortest(strokes, new boolean[n], ARCS.home(), 0, Double.POSITIVE_INFINITY, Map.of());
			assertTrue(travel <= 1.01 * best, "run " + run + ": " + travel + " for " + best);
		}
	}

	/** The same with windows in tags, which are cut before them. */
	@Test
	void smallSheetsWithWindowsAgainstAllOrders() {
		SplittableRandom random = new SplittableRandom(10);
		for (int run = 0; run < 30; run++) {
			List<Line> lines = new ArrayList<>();
			Map<String, String> within = new HashMap<>();
			for (int i = 0; i < 3 + run % 2; i++) {
				double x = 10 + 180 * random.nextDouble();
				double y = 10 + 130 * random.nextDouble();
				double side = 10 + 40 * random.nextDouble();
				lines.add(new Line("tag" + i, "job", "", Drawings.box(x, y, side, side), Stage.CUT, PEN, 1));
				lines.add(new Line("window" + i, "job", "", Drawings.circle(x + side / 2, y + side / 2, side / 4), Stage.CUT,
						PEN, 1));
				within.put("tag" + i, "window" + i);
			}
			Run planned = plan(lines, ARCS, RunChoices.plain());
			List<Stroke> strokes = planned.strokes().toList();
			double travel = Drawings.travel(planned, ARCS.home());
			double best = shortest(strokes, new boolean[strokes.size()], ARCS.home(), 0, Double.POSITIVE_INFINITY, within);
			assertTrue(travel <= 1.01 * best || waitsForMore(lines), "run " + run + ": " + travel + " for " + best);
		}
	}

	/** Whether some line lies within more than its own tag. */
	private static boolean waitsForMore(List<Line> lines) {
		long pairs = lines.stream().filter(outer -> outer.id().startsWith("tag")).mapToLong(outer -> {
			Geometry tag = RunOrderTest.shape(outer.contour());
			return lines.stream().filter(inner -> inner != outer && tag.covers(RunOrderTest.shape(inner.contour()))).count();
		}).sum();
		return pairs > lines.size() / 2;
	}

	/** @param within by id what has to be made before a line, by its id */
	private static double shortest(List<Stroke> strokes, boolean[] made, Point at, double way, double best,
			Map<String, String> within) {
		double least = best;
		boolean all = true;
		for (int i = 0; i < made.length; i++) {
			if (!made[i]) {
				all = false;
				Stroke stroke = strokes.get(i);
				String inner = within.get(stroke.line().id());
				if (inner != null && IntStream.range(0, made.length)
						.anyMatch(k -> !made[k] && strokes.get(k).line().id().equals(inner))) {
					continue;
				}
				made[i] = true;
				for (int end = 0; end < 2; end++) {
					Point in = end == 0 ? stroke.start() : stroke.end();
					Point out = end == 0 ? stroke.end() : stroke.start();
					double next = way + at.distance(in);
					if (next < least) {
						least = Math.min(least, shortest(strokes, made, out, next, least, within));
					}
				}
				made[i] = false;
			}
		}
		return all ? Math.min(least, way + at.distance(ARCS.home())) : least;
	}
}
