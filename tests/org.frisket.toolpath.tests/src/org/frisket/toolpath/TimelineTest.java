package org.frisket.toolpath;

import static org.frisket.toolpath.Drawings.ARCS;
import static org.frisket.toolpath.Drawings.BLADE;
import static org.frisket.toolpath.Drawings.OTHER;
import static org.frisket.toolpath.Drawings.PEN;
import static org.frisket.toolpath.Drawings.TOOLS;
import static org.frisket.toolpath.Drawings.plan;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.toolpath.Timeline.Kind;
import org.frisket.toolpath.Timeline.Span;
import org.frisket.toolpath.blade.TrailingBlade;
import org.frisket.toolpath.motion.Drive;
import org.frisket.toolpath.motion.MotionTime;
import org.frisket.toolpath.track.Move;
import org.junit.jupiter.api.Test;

/** Values derived from the equations of uniform acceleration. */
class TimelineTest {

	private static final double EXACT = 1e-6;

	/** A line of 50 mm at 100 mm/s and 1000 mm/s², 300 mm away at 400 mm/s and 4000 mm/s². */
	@Test
	void oneLine() {
		Carriage carriage = new Carriage(new Drive(400, 4000, 0.02), 0.1, 0.2, 30, new Point(0, 0), true, 0.01);
		Map<String, ToolMotion> tools = Map.of(PEN, new ToolMotion(PEN, new TrailingBlade(0, 0), new Drive(100, 1000, 0.02)));
		Run run = RunPlanner.plan(List.of(new Line("l", "job", "", Drawings.polyline(300, 0, 300, 50), Stage.DRAW, PEN, 1)),
				tools, carriage, RunChoices.plain(), () -> false);
		Timeline timeline = Timeline.of(run, tools, carriage);
		assertEquals(List.of(Kind.TRAVEL, Kind.LOWER, Kind.STROKE, Kind.LIFT, Kind.TRAVEL),
				timeline.spans().stream().map(Span::kind).toList());
		assertEquals(0.85, timeline.spans().get(0).seconds(), EXACT);
		assertEquals(0.6, timeline.seconds(Kind.STROKE), EXACT);
		double home = Math.hypot(300, 50) / 400 + 0.1;
		assertEquals(0.85 + 0.1 + 0.6 + 0.2 + home, timeline.seconds(), EXACT);
		assertEquals(300 + Math.hypot(300, 50), timeline.travelLength(), EXACT);
		assertTrue(timeline.at(0.95 + 0.3).distance(new Point(300, 25)) < 1e-9);
		assertEquals(2, timeline.spanAt(1));
		assertEquals(carriage.home(), timeline.at(-1));
		assertEquals(carriage.home(), timeline.at(1000));
		assertEquals(1, timeline.spans().get(4).stroke());
	}

	/** Side by side, so that the middle of an edge is where it starts: half a side, three sides, half a side. */
	@Test
	void aSquareSlowsAtItsCorners() {
		Run run = plan(List.of(new Line("s", "job", "", Drawings.box(5, 5, 10, 10), Stage.DRAW, PEN, 1)), ARCS,
				RunChoices.plain());
		double corner = new Drive(50, 1000, 0.02).cornerSpeed(Math.PI / 2);
		// half a side has no room for 50 mm/s on its way from rest to the corner: 1.25 mm and 1.226 mm of 5
		double half = 50 / 1000.0 + (50 - corner) / 1000 + (5 - 1.25 - (2500 - corner * corner) / 2000) / 50;
		assertEquals(2 * half + 3 * 0.237068, Timeline.of(run, TOOLS, ARCS).seconds(Kind.STROKE), 2e-6);
	}

	@Test
	void passesWithoutLiftingAreOneMotion() {
		Run run = plan(List.of(new Line("c", "job", "", Drawings.circle(30, 30, 20), Stage.CUT, BLADE, 3)), ARCS,
				RunChoices.plain());
		Timeline timeline = Timeline.of(run, TOOLS, ARCS);
		assertEquals(List.of(Kind.TRAVEL, Kind.LOWER, Kind.STROKE, Kind.STROKE, Kind.STROKE, Kind.LIFT, Kind.TRAVEL),
				timeline.spans().stream().map(Span::kind).toList());
		List<Move> all = run.strokes().flatMap(stroke -> stroke.axis().stream()).toList();
		assertEquals(MotionTime.of(all, Drawings.DRIVE).seconds(), timeline.seconds(Kind.STROKE), EXACT);
		double alone = MotionTime.of(run.strokes().findFirst().orElseThrow().axis(), Drawings.DRIVE).seconds();
		// it need not stop between them
		assertEquals(3 * alone - 4 * (50.0 / 1000) / 2, timeline.seconds(Kind.STROKE), 0.01);
	}

	@Test
	void limitsOfSingleMoves() {
		RunChoices choices = new RunChoices(0, 0, false, RunChoices.Tabs.NONE, RunChoices.PassOrder.PART, 100, 0.5,
				RunChoices.Direction.EITHER, 0, 1);
		List<Line> circle = List.of(new Line("c", "job", "", Drawings.circle(30, 30, 20), Stage.DRAW, PEN, 1));
		double way = plan(circle, ARCS, choices).strokes().findFirst().orElseThrow().length();
		// from rest: D / v + v / a
		assertEquals(way / 25 + 25 / 1000.0, Timeline.of(plan(circle, ARCS, choices), TOOLS, ARCS).seconds(Kind.STROKE), 1e-6);
		assertEquals(way / 50 + 50 / 1000.0,
				Timeline.of(plan(circle, ARCS, RunChoices.plain()), TOOLS, ARCS).seconds(Kind.STROKE), 1e-6);
		List<Move> moves = List.of(Drawings.polyline(0, 0, 10, 0)).stream()
				.flatMap(c -> org.frisket.toolpath.track.Tracks.arcs(c, 1).moves().stream()).toList();
		List<Move> two = List.of(moves.get(0).between(0, 5), moves.get(0).between(5, 10));
		MotionTime time = MotionTime.of(two, new Drive(50, 1000, 0.02), List.of(20.0, 80.0));
		// from rest to 20 and on; then up to 50 and down to rest
		assertEquals(0.02 + (5 - 0.2) / 20, time.seconds(0), EXACT);
		assertEquals(0.03 + 0.05 + (5 - 1.05 - 1.25) / 50, time.seconds(1), EXACT);
	}

	/** Spans follow each other, the place at each time lies on the way, and nothing is counted twice or left out. */
	@Test
	void allTogether() {
		SplittableRandom random = new SplittableRandom(2);
		for (int round = 0; round < 10; round++) {
			List<Line> lines = new ArrayList<>();
			for (int i = 0; i < 40; i++) {
				double x = 300 * random.nextDouble();
				double y = 200 * random.nextDouble();
				Contour contour = i % 3 == 0 ? Drawings.polyline(x, y, x + 9, y + 3, x, y + 7) : Drawings.circle(x, y, 4);
				lines.add(new Line("l" + i, "job" + i % 4, "", contour, Stage.values()[random.nextInt(5)],
						List.of(BLADE, OTHER, PEN).get(random.nextInt(3)), 1 + random.nextInt(2)));
			}
			Run run = plan(lines, round % 2 == 0 ? ARCS : Drawings.CHORDS, Drawings.shuffled(200));
			Timeline timeline = Timeline.of(run, TOOLS, ARCS);
			List<Span> spans = timeline.spans();
			Point at = ARCS.home();
			double now = 0;
			for (int i = 0; i < spans.size(); i++) {
				Span span = spans.get(i);
				assertEquals(now, span.from(), 0);
				assertTrue(at.distance(span.start()) < 1e-9);
				now = span.to();
				at = span.end();
				if (span.seconds() > 0) {
					assertEquals(i, timeline.spanAt((span.from() + span.to()) / 2));
					assertTrue(timeline.at(span.from()).distance(span.start()) < 1e-6);
				}
			}
			assertEquals(ARCS.home(), at);
			assertEquals(now, timeline.seconds(), 0);
			int stops = (int) spans.stream().filter(span -> span.kind() == Kind.STOP).count();
			assertEquals(30.0 * stops, timeline.seconds(Kind.STOP), 1e-9);
			assertEquals(timeline.seconds(), timeline.secondsByJob().values().stream().mapToDouble(v -> v).sum(), 1e-6);
			double worked = run.strokes().mapToDouble(Stroke::length).sum();
			assertEquals(worked, timeline.lengthByJob().values().stream().mapToDouble(v -> v).sum(), 1e-6);
			assertEquals(worked, timeline.lengthByTool().values().stream().mapToDouble(v -> v).sum(), 1e-6);
			assertEquals(Drawings.travel(run, ARCS.home()), timeline.travelLength(), 1e-6);
			assertNeverFast(timeline);
		}
	}

	/**
	 * Places a little time apart are no farther apart than the fastest the machine goes, by which the way is followed.
	 */
	private static void assertNeverFast(Timeline timeline) {
		double step = timeline.seconds() / 5000;
		Point last = timeline.at(0);
		for (int i = 1; i <= 5000; i++) {
			Point next = timeline.at(i * step);
			assertTrue(last.distance(next) <= 300 * step + 1e-6);
			last = next;
		}
	}

	@Test
	void sharesOfJobs() {
		List<Line> lines = List.of(new Line("a", "one", "", Drawings.polyline(10, 0, 20, 0), Stage.DRAW, PEN, 1),
				new Line("b", "two", "", Drawings.polyline(40, 0, 60, 0), Stage.CREASE, OTHER, 1),
				new Line("c", "one", "", Drawings.polyline(70, 0, 80, 0), Stage.CREASE, OTHER, 1));
		Timeline timeline = Timeline.of(plan(lines, ARCS, RunChoices.plain()), TOOLS, ARCS);
		Map<String, Double> seconds = timeline.secondsByJob();
		List<Span> spans = timeline.spans();
		double one = spans.subList(0, 4).stream().mapToDouble(Span::seconds).sum();
		assertEquals(Kind.STOP, spans.get(4).kind());
		double two = spans.subList(5, 9).stream().mapToDouble(Span::seconds).sum();
		double again = spans.subList(9, 13).stream().mapToDouble(Span::seconds).sum();
		double shared = 15 + spans.get(13).seconds() / 2;
		assertEquals(one + again + shared, seconds.get("one"), EXACT);
		assertEquals(two + shared, seconds.get("two"), EXACT);
		assertEquals(Map.of("one", 20.0, "two", 20.0), rounded(timeline.lengthByJob()));
		assertEquals(Map.of(PEN, 10.0, OTHER, 30.0), rounded(timeline.lengthByTool()));
	}

	private static Map<String, Double> rounded(Map<String, Double> lengths) {
		return lengths.entrySet().stream()
				.collect(java.util.stream.Collectors.toMap(Map.Entry::getKey, e -> Math.rint(e.getValue() * 1e6) / 1e6));
	}

	@Test
	void nothing() {
		Timeline timeline = Timeline.of(new Run(List.of()), TOOLS, ARCS);
		assertEquals(0, timeline.seconds());
		assertEquals(-1, timeline.spanAt(0));
		assertEquals(ARCS.home(), timeline.at(3));
		assertEquals(Map.of(), timeline.secondsByJob());
	}
}
