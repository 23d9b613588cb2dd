package org.frisket.run.play;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.material.tools.ToolKind;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Timeline.Kind;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Straight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is done, under way and next at each time of a run. */
class PlaybackTest {

	private static final double NEAR = 1e-9;

	private final Playback run = SampleRun.two();

	@Test
	void runBeginsWithNothingDoneAndEndsWithAll() {
		Moment first = run.at(-5);
		assertEquals(0, first.done());
		assertEquals(new Point(0, 0), first.place());
		Moment last = run.at(run.seconds() + 5);
		assertTrue(last.isOver());
		assertEquals(run.size(), last.done());
		assertEquals(run.size(), last.stroke());
		assertEquals(run.mm(), run.mm(last), NEAR);
		assertEquals(160, run.mm(), NEAR);
	}

	@Test
	void halfWayAlongAStrokeTheTipIsHalfWayAlongIt() {
		double from = run.timeOf(2);
		Moment half = run.at(from + 2);
		assertEquals(Kind.STROKE, half.kind());
		assertEquals(2, half.stroke());
		assertEquals(2, half.done());
		assertEquals(1, half.leg());
		// 40 mm at 10 mm/s, with hardly any time to gather speed
		assertEquals(0.5, half.share(), 1e-3);
		assertEquals(20, half.place().x(), 0.05);
		assertEquals(20, half.place().y(), NEAR);
		assertEquals(40 + 40 * half.share(), run.mm(half), NEAR);
		assertTrue(half.isDown());
		assertFalse(run.at(from - 0.5).isDown(), "it is lowered then");
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3 })
	void whatIsDoneIsWhatHasEndedInAnyRun(long seed) {
		Random random = new Random(seed);
		SampleRun made = new SampleRun();
		for (int leg = 0; leg < 1 + random.nextInt(4); leg++) {
			SampleRun.Cut[] cuts = new SampleRun.Cut[random.nextInt(6)];
			for (int i = 0; i < cuts.length; i++) {
				cuts[i] = new SampleRun.Cut(String.valueOf(random.nextInt(3)), random.nextInt(50), random.nextInt(50),
						1 + random.nextInt(50));
			}
			made.leg(Stage.CUT, random.nextBoolean() ? ToolKind.BLADE : ToolKind.PEN, cuts);
		}
		Playback any = made.playback();
		double worked = 0;
		for (int step = 0; step <= 500; step++) {
			double time = any.seconds() * step / 500;
			Moment moment = any.at(time);
			int ended = (int) any.run().timeline().spans().stream().filter(span -> span.kind() == Kind.STROKE && span.to() <= time)
					.count();
			assertEquals(ended, moment.done());
			assertTrue(any.mm(moment) >= worked, "line is never taken back");
			worked = any.mm(moment);
			assertTrue(any.settled(time) <= time);
			assertEquals(moment.done(), any.at(any.settled(time)).done(), "what has settled is all that is done");
		}
		for (Leap leap : Leap.values()) {
			List<Double> there = new ArrayList<>();
			double time = 0;
			while (time < any.seconds()) {
				double next = any.next(leap, time);
				assertTrue(next > time);
				there.add(next);
				time = next;
			}
			for (int i = there.size() - 2; i >= 0; i--) {
				time = any.previous(leap, time);
				assertEquals(there.get(i), time, NEAR, "back as it came");
			}
		}
	}

	@Test
	void jumpsGoToStrokesPartsAndTools() {
		assertEquals(run.timeOf(0), run.next(Leap.STROKE, 0));
		assertEquals(run.timeOf(1), run.next(Leap.STROKE, run.timeOf(0)));
		assertEquals(run.timeOf(1), run.previous(Leap.STROKE, run.timeOf(1) + 1), "to the beginning of what is under way");
		assertEquals(0, run.previous(Leap.STROKE, run.timeOf(0)));
		assertEquals(run.timeOf(2), run.next(Leap.PART, run.timeOf(0)), "the same part by another tool");
		assertEquals(run.timeOf(3), run.next(Leap.PART, run.timeOf(2)));
		assertEquals(run.seconds(), run.next(Leap.PART, run.timeOf(3)));
		double stop = run.next(Leap.TOOL, 0);
		assertEquals(Kind.STOP, run.at(stop).kind());
		assertEquals(1, run.at(stop).leg());
		assertEquals(0, run.previous(Leap.TOOL, stop));
	}

	@Test
	void legsSayWhatTheyTake() {
		assertEquals(2, run.legs().size());
		assertEquals(1, run.stops());
		LegLine pen = run.legs().get(0);
		LegLine blade = run.legs().get(1);
		assertFalse(pen.stop());
		assertTrue(blade.stop());
		assertEquals(40, pen.mm(), NEAR);
		assertEquals(120, blade.mm(), NEAR);
		assertEquals(2, blade.first());
		assertEquals(3, blade.strokes());
		assertEquals(run.seconds(), pen.seconds() + blade.seconds(), NEAR);
		assertEquals(1, run.legOf(2));
		assertEquals(0, run.legOf(1));
		assertEquals(1, run.legOf(run.size()));
	}

	@Test
	void strokeIsFoundByItsPlace() {
		assertEquals(OptionalInt.of(3), run.near(new Point(20, 31), 2));
		assertEquals(OptionalInt.of(2), run.near(new Point(20, 24), 8), "the nearest of two");
		assertEquals(OptionalInt.empty(), run.near(new Point(20, 60), 5));
	}

	@Test
	void wayOfAnArcIsNearIt() {
		Arc arc = new Arc(new Point(0, 0), 30, 0, -Math.PI);
		StrokeWay way = StrokeWay.of(List.of(arc, new Straight(arc.end(), new Point(-30, 10))));
		assertEquals(new Point(-30, 10), way.at(1));
		for (double angle = 0; angle <= Math.PI; angle += 0.01) {
			assertTrue(way.distance(new Point(30 * Math.cos(angle), -30 * Math.sin(angle))) <= 0.0501);
		}
		assertEquals(0.05, way.distance(new Point(-30.05, 5)), 1e-6);
		assertEquals(-30, way.bounds().minX(), 1e-6);
		assertEquals(way.size(), way.cornersUpTo(1));
		assertEquals(1, way.cornersUpTo(0));
	}

	@Test
	void emptyRunIsOverAtOnce() {
		Playback none = new SampleRun().playback();
		assertEquals(0, none.seconds());
		assertTrue(none.at(0).isOver());
		assertEquals(0, none.next(Leap.STROKE, 0));
		assertEquals(0, none.previous(Leap.TOOL, 0));
		assertEquals(OptionalInt.empty(), none.near(new Point(0, 0), 10));
	}

	@Test
	void cancelEndsIt() {
		Monitor cancelled = () -> true;
		assertThrows(CancellationException.class, () -> Playback.of(run.run(), cancelled));
	}
}
