package org.frisket.toolpath;

import static org.frisket.toolpath.Drawings.ARCS;
import static org.frisket.toolpath.Drawings.CHORDS;
import static org.frisket.toolpath.Drawings.PEN;
import static org.frisket.toolpath.Drawings.TOOLS;
import static org.frisket.toolpath.Drawings.cut;
import static org.frisket.toolpath.Drawings.only;
import static org.frisket.toolpath.Drawings.plan;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.toolpath.blade.TipPath;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Straight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From lines to the moves of the axis; the values are those of the trailing tip's equation, offset 0.25 mm. */
class RunPlannerTest {

	private static final RunChoices PLAIN = RunChoices.plain();

	@Test
	void anOpenRightAngle() {
		Stroke stroke = only(cut("l", Drawings.polyline(0, 0, 10, 0, 10, 10)), ARCS, PLAIN);
		assertEquals(20.392699, Drawings.length(stroke.axis()), 5e-7);
		assertEquals(20, stroke.length(), 1e-9);
		// from the far end, as that leaves it nearer to home; the axis comes down ahead in the line's direction
		assertTrue(stroke.start().distance(new Point(10, 9.75)) < 1e-9);
		assertTrue(stroke.end().distance(new Point(-0.25, 0)) < 1e-9);
	}

	@Test
	void closedPolygons() {
		Stroke square = only(cut("s", Drawings.box(2, 3, 10, 10)), ARCS, PLAIN);
		assertEquals(41.570796, Drawings.length(square.axis()), 5e-7);
		Point start = square.tip().get(0).start();
		assertTrue(start.distance(new Point(7, 3)) < 1e-9 || start.distance(new Point(2, 8)) < 1e-9, "begun at " + start);
		Stroke triangle = only(cut("t", Drawings.polygon(0, 0, 20, 0, 10, 10 * Math.sqrt(3))), ARCS, PLAIN);
		assertEquals(61.570796, Drawings.length(triangle.axis()), 5e-7);
		assertEquals(3 * 0.523599, Drawings.length(triangle.axis().stream().filter(Arc.class::isInstance).toList()), 2e-6);
	}

	@Test
	void star() {
		double[] xy = new double[20];
		for (int i = 0; i < 10; i++) {
			double r = i % 2 == 0 ? 10 : 10 * Math.sin(Math.toRadians(18)) / Math.sin(Math.toRadians(54));
			xy[2 * i] = r * Math.cos(Math.toRadians(36 * i));
			xy[2 * i + 1] = r * Math.sin(Math.toRadians(36 * i));
		}
		Stroke star = only(cut("s", Drawings.polygon(xy)), ARCS, PLAIN);
		assertEquals(4.712389, Drawings.length(star.axis()) - star.length(), 5e-7);
	}

	@ParameterizedTest
	@CsvSource({ "10, 10.003125", "2, 2.015564", "1, 1.030776", "0.5, 0.559017" })
	void circles(double radius, double led) {
		Carriage fine = new Carriage(ARCS.travel(), 0, 0, 0, ARCS.home(), true, 1e-4);
		Stroke stroke = only(cut("c", Drawings.circle(20, 20, radius)), fine, PLAIN);
		// four cubics are within 0.03 % of a circle
		for (Move move : stroke.axis()) {
			for (double share : new double[] { 0, 0.5, 1 }) {
				assertEquals(led, move.at(share * move.length()).distance(new Point(20, 20)), 3e-4 * radius + 4e-4);
			}
		}
		assertEquals(2 * Math.PI * led, Drawings.length(stroke.axis()), 2e-3 * radius);
	}

	/**
	 * Without an offset the axis is the drawing: what a tip that trails would cut of a corner then, 0.25 and 1 mm on.
	 */
	@Test
	void withoutAnOffsetTheAxisIsTheDrawing() {
		Line line = new Line("l", "job", "", Drawings.polyline(0, -5, 0, 0, 0.25, 0), Stage.DRAW, PEN, 1);
		Stroke stroke = only(line, ARCS, PLAIN);
		assertEquals(stroke.tip(), stroke.axis());
		List<Point> cut = TipPath.of(stroke.axis(), 0.25, Math.PI / 2, 10);
		Point last = cut.get(cut.size() - 1);
		assertEquals(0.059601, last.x(), 5e-7);
		assertEquals(-0.162014, last.y(), 5e-7);
	}

	/** A corner below the threshold is not swung round; one of 1 mm radius needs none. */
	@Test
	void smallAndRoundCorners() {
		double a = Math.toRadians(9.5);
		Stroke small = only(cut("l", Drawings.polyline(0, 0, 5, 0, 5 + 5 * Math.cos(a), 5 * Math.sin(a))), ARCS, PLAIN);
		assertTrue(small.axis().stream().allMatch(Straight.class::isInstance));
		double worst = TipPath.of(small.axis(), 0.25, small.tip().get(0).startHeading(), 1e-3).stream()
				.mapToDouble(p -> Math.min(Math.abs(p.y()), Math.abs((p.x() - 5) * Math.sin(a) - p.y() * Math.cos(a)))).max()
				.orElseThrow();
		assertTrue(worst <= 0.25 * Math.sin(a), "off by " + worst);
		double k = 4.0 / 3 * (Math.sqrt(2) - 1);
		Contour fillet = Contour.open(List.of(new org.frisket.geometry.Line(new Point(0, 0), new Point(9, 0)),
				new Cubic(new Point(9, 0), new Point(9 + k, 0), new Point(10, 1 - k), new Point(10, 1)),
				new org.frisket.geometry.Line(new Point(10, 1), new Point(10, 10))));
		Stroke round = only(cut("r", fillet), new Carriage(ARCS.travel(), 0, 0, 0, ARCS.home(), true, 1e-4), PLAIN);
		double arcs = Drawings.length(round.axis().stream().filter(Arc.class::isInstance).toList());
		assertEquals(1.619140, arcs, 1e-3);
	}

	@Test
	void aCarriageWithoutArcsGetsChords() {
		Stroke stroke = only(cut("s", Drawings.box(2, 3, 10, 10)), CHORDS, PLAIN);
		assertTrue(stroke.axis().stream().allMatch(Straight.class::isInstance));
		// a right angle: steps of 2 acos(1 - 0.0075 / 0.25) at most, which are four
		assertEquals(5 + 4 * 4, stroke.axis().size());
		assertEquals(40 + 4 * 4 * 0.5 * Math.sin(Math.PI / 16), Drawings.length(stroke.axis()), 1e-9);
	}

	@Test
	void noiseIsLeftOutAndNonsenseRefused() {
		Point p = new Point(3, 3);
		List<Line> lines = List.of(cut("point", Contour.closed(List.of(new org.frisket.geometry.Line(p, p)))),
				cut("empty", Contour.open(List.of())), cut("still", Contour.open(List.of(new Cubic(p, p, p, p)))));
		assertEquals(List.of(), plan(lines, ARCS, PLAIN).legs());
		assertEquals(List.of(), plan(List.of(), ARCS, PLAIN).legs());
		Line unknown = new Line("x7", "job 5", "", Drawings.box(0, 0, 1, 1), Stage.CUT, "nowhere", 1);
		String message = assertThrows(IllegalArgumentException.class, () -> plan(List.of(unknown), ARCS, PLAIN)).getMessage();
		assertTrue(message.contains("x7") && message.contains("job 5") && message.contains("nowhere"), message);
		Line nan = cut("x8", Contour.open(List.of(new org.frisket.geometry.Line(p, new Point(1, 2)),
				new Cubic(new Point(1, 2), new Point(Double.NaN, 0), p, p))));
		message = assertThrows(IllegalArgumentException.class, () -> plan(List.of(nan), ARCS, PLAIN)).getMessage();
		assertTrue(message.contains("x8") && message.contains("segment 2"), message);
	}

	@Test
	void tenThousandNodes() {
		double[] xy = new double[20_000];
		for (int i = 0; i < 10_000; i++) {
			double r = i % 2 == 0 ? 100 : 99;
			xy[2 * i] = 110 + r * Math.cos(2 * Math.PI * i / 10_000);
			xy[2 * i + 1] = 110 + r * Math.sin(2 * Math.PI * i / 10_000);
		}
		Contour contour = Drawings.polygon(xy);
		assertEquals(contour.length(), only(cut("n", contour), ARCS, PLAIN).length(), 1e-6);
	}

	@Test
	void cancelAndProgress() {
		List<Line> lines = new ArrayList<>();
		for (int i = 0; i < 30; i++) {
			lines.add(cut("l" + i, Drawings.circle(10 * i, 10, 4)));
		}
		int[] asked = { 0 };
		Monitor never = () -> {
			asked[0]++;
			return false;
		};
		RunPlanner.plan(lines, TOOLS, ARCS, Drawings.shuffled(100), never);
		for (int stop = 0; stop < asked[0]; stop += 23) {
			int[] left = { stop };
			assertThrows(CancellationException.class,
					() -> RunPlanner.plan(lines, TOOLS, ARCS, Drawings.shuffled(100), () -> left[0]-- <= 0));
		}
		List<Double> told = new ArrayList<>();
		RunPlanner.plan(lines, TOOLS, ARCS, PLAIN, new Monitor() {

			@Override
			public boolean isCancelled() {
				return false;
			}

			@Override
			public void worked(double fraction) {
				told.add(fraction);
			}
		});
		assertEquals(told.stream().sorted().toList(), told);
		assertEquals(1, told.get(told.size() - 1), 1e-12);
	}
}
