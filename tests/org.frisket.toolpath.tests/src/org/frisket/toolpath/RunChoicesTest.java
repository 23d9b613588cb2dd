package org.frisket.toolpath;

import static org.frisket.toolpath.Drawings.ARCS;
import static org.frisket.toolpath.Drawings.BLADE;
import static org.frisket.toolpath.Drawings.CHORDS;
import static org.frisket.toolpath.Drawings.PEN;
import static org.frisket.toolpath.Drawings.cut;
import static org.frisket.toolpath.Drawings.only;
import static org.frisket.toolpath.Drawings.plan;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.toolpath.RunChoices.Direction;
import org.frisket.toolpath.RunChoices.PassOrder;
import org.frisket.toolpath.RunChoices.Tabs;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Move;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What whoever runs a sheet decides, and what becomes of it. */
class RunChoicesTest {

	@ParameterizedTest
	@EnumSource(Direction.class)
	void directionAsSeen(Direction direction) {
		RunChoices choices = new RunChoices(0, 0, false, Tabs.NONE, PassOrder.PART, 0, 1, direction, 0, 1);
		for (Contour box : List.of(Drawings.box(2, 2, 10, 10), Drawings.box(2, 2, 10, 10).reversed())) {
			Stroke stroke = only(cut("s", box), ARCS, choices);
			// along the upper edge, where y is least, clockwise goes to the right on a page
			Move upper = stroke.tip().stream().filter(m -> m.start().y() == 2 && m.end().y() == 2).findFirst().orElseThrow();
			boolean right = upper.end().x() > upper.start().x();
			boolean drawn = box.segments().stream().anyMatch(s -> s.start().y() == 2 && s.end().y() == 2
					&& s.end().x() > s.start().x());
			assertEquals(direction == Direction.EITHER ? drawn : direction == Direction.CLOCKWISE, right);
		}
	}

	@Test
	void leadInAndOvercut() {
		RunChoices choices = new RunChoices(1.5, 0.75, false, Tabs.NONE, PassOrder.PART, 0, 1, Direction.EITHER, 0, 1);
		Stroke closed = only(cut("s", Drawings.box(2, 3, 10, 10)), ARCS, choices);
		assertEquals(42.25, closed.length(), 1e-9);
		Point start = closed.tip().get(0).start();
		Point end = closed.tip().get(closed.tip().size() - 1).end();
		assertEquals(2.25, start.distance(end), 1e-9);
		Stroke open = only(cut("l", Drawings.polyline(0, 0, 10, 0)), ARCS, choices);
		assertEquals(10, open.length(), 1e-9);
		Line pen = new Line("p", "job", "", Drawings.box(2, 3, 10, 10), Stage.DRAW, PEN, 1);
		assertEquals(40, only(pen, ARCS, choices).length(), 1e-9);
		// once more round at most
		assertEquals(3 * 4, only(cut("s", Drawings.box(2, 3, 1, 1)), ARCS, new RunChoices(100, 100, false, Tabs.NONE,
				PassOrder.PART, 0, 1, Direction.EITHER, 0, 1)).length(), 1e-6);
	}

	/** Passes of a closed line go on without lifting; the lead-in is for the first, the overcut for the last. */
	@Test
	void passesOfAPartAtOnce() {
		RunChoices choices = new RunChoices(1, 0.5, false, Tabs.NONE, PassOrder.PART, 0, 1, Direction.EITHER, 0, 1);
		List<Line> lines = List.of(thrice("a", Drawings.box(2, 2, 10, 10)), thrice("b", Drawings.polyline(20, 2, 30, 2)));
		Run run = plan(lines, ARCS, choices);
		assertEquals(2, run.strokes().map(s -> s.line().id()).distinct().count());
		List<Stroke> strokes = Stream.concat(of(run, "a").stream(), of(run, "b").stream()).toList();
		assertEquals(List.of(1, 2, 3, 1, 2, 3), strokes.stream().map(Stroke::pass).toList());
		assertEquals(List.of(41.0, 40.0, 40.5),
				strokes.subList(0, 3).stream().map(s -> Math.rint(s.length() * 1e6) / 1e6).toList());
		assertTrue(strokes.get(1).continues(strokes.get(0)) && strokes.get(2).continues(strokes.get(1)));
		// a trailing blade cannot go back without being lifted
		assertTrue(!strokes.get(4).continues(strokes.get(3)) && !strokes.get(3).continues(strokes.get(2)));
		assertTrue(strokes.get(3).tip().get(0).start().distance(strokes.get(4).tip().get(0).end()) < 1e-9);
		Line pen = new Line("p", "job", "", Drawings.polyline(0, 0, 10, 0), Stage.DRAW, PEN, 2);
		List<Stroke> drawn = plan(List.of(pen), ARCS, choices).strokes().toList();
		assertTrue(drawn.get(1).continues(drawn.get(0)));
	}

	/** All are cut through in the last round, the inner one before the outer one. */
	@Test
	void passesOfTheSheet() {
		RunChoices choices = new RunChoices(0, 0, false, Tabs.NONE, PassOrder.SHEET, 0, 1, Direction.EITHER, 0, 1);
		List<Line> lines = List.of(cut("outer", Drawings.box(0, 0, 50, 50)), thrice("inner", Drawings.box(20, 20, 5, 5)),
				new Line("beside", "job", "", Drawings.box(60, 0, 5, 5), Stage.CUT, BLADE, 2));
		List<String> order = plan(lines, ARCS, choices).strokes().map(s -> s.line().id() + s.pass()).toList();
		assertEquals("inner1", order.get(0));
		assertEquals(List.of("beside1", "inner2"), order.subList(1, 3).stream().sorted().toList());
		assertEquals(List.of("beside2", "inner3", "outer1"), order.subList(3, 6).stream().sorted().toList());
		assertTrue(order.indexOf("inner3") < order.indexOf("outer1"));
	}

	@Test
	void tabs() {
		RunChoices choices = new RunChoices(1, 1, false, new Tabs(4, 0.6, 20), PassOrder.PART, 0, 1, Direction.EITHER, 0, 1);
		List<Line> lines = List.of(cut("box", Drawings.box(2, 2, 10, 10)), cut("small", Drawings.box(30, 2, 4, 4)),
				new Line("kiss", "job", "", Drawings.box(2, 20, 10, 10), Stage.KISS_CUT, BLADE, 1),
				new Line("twice", "job", "", Drawings.box(20, 20, 10, 10), Stage.CUT, BLADE, 2));
		Run run = plan(lines, ARCS, choices);
		assertEquals(4, of(run, "box").size());
		assertEquals(40 - 4 * 0.6, of(run, "box").stream().mapToDouble(Stroke::length).sum(), 1e-9);
		// too short for tabs, and not cut through
		assertEquals(18, of(run, "small").get(0).length(), 1e-9);
		assertEquals(42, of(run, "kiss").get(0).length(), 1e-9);
		assertEquals(List.of(1, 1, 1, 1, 2, 2, 2, 2), of(run, "twice").stream().map(Stroke::pass).toList());
		for (int i = 0; i < 4; i++) {
			assertEquals(of(run, "twice").get(i).tip(), of(run, "twice").get(i + 4).tip());
		}
	}

	@Test
	void tightCurvesAreFollowedSlower() {
		RunChoices choices = new RunChoices(0, 0, false, Tabs.NONE, PassOrder.PART, 2, 0.5, Direction.EITHER, 0, 1);
		assertTrue(only(pen(Drawings.circle(10, 10, 1.9)), ARCS, choices).speeds().stream().allMatch(v -> v == 25));
		assertTrue(only(pen(Drawings.circle(10, 10, 2.1)), ARCS, choices).speeds().stream().allMatch(v -> v == 50));
		assertTrue(only(pen(Drawings.box(1, 1, 1, 1)), ARCS, choices).speeds().stream().allMatch(v -> v == 50));
		// a circle that was drawn as chords
		double[] chords = new double[48];
		for (int i = 0; i < 24; i++) {
			chords[2 * i] = 10 + 1.5 * Math.cos(Math.PI * i / 12);
			chords[2 * i + 1] = 10 + 1.5 * Math.sin(Math.PI * i / 12);
		}
		assertTrue(only(pen(Drawings.polygon(chords)), CHORDS, choices).speeds().stream().allMatch(v -> v == 25));
		// the axis swings round the corners of a cut
		Stroke cut = only(cut("s", Drawings.box(2, 3, 10, 10)), ARCS, choices);
		for (int i = 0; i < cut.axis().size(); i++) {
			assertEquals(cut.axis().get(i) instanceof Arc ? 25 : 50, cut.speeds().get(i));
		}
	}

	private static Line pen(Contour contour) {
		return new Line("p", "job", "", contour, Stage.DRAW, PEN, 1);
	}

	private static Line thrice(String id, Contour contour) {
		return new Line(id, "job", id, contour, Stage.CUT, BLADE, 3);
	}

	private static List<Stroke> of(Run run, String id) {
		return run.strokes().filter(stroke -> stroke.line().id().equals(id)).toList();
	}
}
