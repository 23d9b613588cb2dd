package org.frisket.toolpath.track;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;
import org.frisket.toolpath.Drawings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Arcs and chords against the curve, sampled so densely that the samples' own error does not count. */
class TracksTest {

	private static final int SAMPLES = 600;

	@ParameterizedTest
	@ValueSource(doubles = { 1e-2, 1, 100, 1e4 })
	void curvesStayWithinTheTolerance(double scale) {
		SplittableRandom random = new SplittableRandom(4);
		for (int run = 0; run < 16; run++) {
			Cubic cubic = new Cubic(place(random, scale), place(random, scale), place(random, scale), place(random, scale));
			double tolerance = scale * (run % 2 == 0 ? 1e-2 : 1e-3);
			check(cubic, tolerance);
		}
	}

	@Test
	void smoothCurvesKeepTheirTangents() {
		SplittableRandom random = new SplittableRandom(5);
		for (int run = 0; run < 40; run++) {
			Contour smooth = Drawings.smooth(random, 50, 50, 10, 30, 4 + random.nextInt(12));
			List<Move> moves = Tracks.arcs(smooth, 0.01).moves();
			assertJoined(moves, 1e-7);
			for (int i = 0; i < moves.size(); i++) {
				double turn = Track.turn(moves.get(i), moves.get((i + 1) % moves.size()));
				assertEquals(0, turn, 1e-5, "run " + run + " at move " + i);
			}
		}
	}

	@Test
	void aCircleOfCubicsHasFewArcs() {
		List<Move> moves = Tracks.arcs(Drawings.circle(20, 20, 10), 0.01).moves();
		assertTrue(moves.size() <= 8, "moves: " + moves.size());
		for (Move move : moves) {
			assertEquals(10, ((Arc) move).radius(), 0.02);
		}
	}

	/** Out and back again, a cusp, a loop, and curves that are straight lines or hardly anything. */
	@Test
	void unusualCurves() {
		check(new Cubic(p(0, 0), p(20, 0), p(-10, 0), p(10, 0)), 0.01);
		check(new Cubic(p(0, 0), p(10, 10), p(0, 10), p(10, 0)), 0.01);
		check(new Cubic(p(0, 0), p(30, 20), p(-20, 20), p(10, 0)), 0.01);
		check(new Cubic(p(0, 0), p(15, 10), p(-15, 10), p(0, 0)), 0.01);
		check(new Cubic(p(0, 0), p(0, 0), p(10, 5), p(10, 5)), 0.01);
		check(new Cubic(p(0, 0), p(0, 0), p(0, 0), p(10, 5)), 0.01);
		check(new Cubic(p(0, 0), p(5, 1e-9), p(7, 1e-9), p(10, 0)), 0.01);
		check(new Cubic(p(0, 0), p(0, 10), p(1e-6, 10), p(1e-6, 0)), 0.01);
		check(new Cubic(p(1e5, 1e5), p(1e5 + 1, 1e5), p(1e5 + 2, 1e5 + 1), p(1e5 + 2, 1e5 + 2)), 0.01);
	}

	/** No arcs fit it, so that halving it would not end before millions of pieces. */
	@Test
	void aCurveWithoutSizeIsLeftOut() {
		Point there = p(3, 4);
		Cubic nothing = new Cubic(there, there, there, there);
		Contour contour = Contour.open(List.of(new Cubic(p(0, 0), p(1, 3), p(2, 4), there), nothing,
				new Cubic(there, p(5, 4), p(6, 2), p(7, 0))));
		Contour without = Contour.open(List.of(contour.segments().get(0), contour.segments().get(2)));
		assertTimeoutPreemptively(Duration.ofMinutes(1),
				() -> assertEquals(Tracks.arcs(without, 0.01), Tracks.arcs(contour, 0.01)));
	}

	@Test
	void straightLinesStayAsTheyAre() {
		Track track = Tracks.arcs(Drawings.box(1, 2, 10, 5), 0.01);
		assertEquals(4, track.moves().size());
		assertTrue(track.closed());
		assertEquals(30, track.length(), 1e-12);
	}

	@Test
	void chordsOfArcsStayWithinTheTolerance() {
		SplittableRandom random = new SplittableRandom(6);
		for (int run = 0; run < 300; run++) {
			double radius = Math.pow(10, 4 * random.nextDouble() - 2);
			double tolerance = Math.pow(10, -3 * random.nextDouble() - 1);
			Arc arc = new Arc(p(3, -4), radius, 7 * random.nextDouble(), 12 * random.nextDouble() - 6);
			List<Move> chords = Chords.of(arc, tolerance);
			assertJoined(chords, 1e-9);
			assertTrue(arc.start().distance(chords.get(0).start()) < 1e-9);
			assertTrue(arc.end().distance(chords.get(chords.size() - 1).end()) < 1e-9);
			for (Move chord : chords) {
				double sagitta = radius - chord.at(chord.length() / 2).distance(arc.centre());
				assertTrue(sagitta <= tolerance * (1 + 1e-9) + 1e-12, "sagitta " + sagitta);
			}
		}
	}

	/**
	 * With d = 0.25 mm a corner of 90 degrees takes three chords to within 0.01 mm: steps of 2 acos(1 - e / d) at most.
	 */
	@Test
	void threeChordsForASwing() {
		assertEquals(3, Chords.of(new Arc(p(0, 0), 0.25, 0, Math.PI / 2), 0.01).size());
	}

	@Test
	void stretchesOfATrack() {
		SplittableRandom random = new SplittableRandom(7);
		MeasuredTrack track = new MeasuredTrack(Tracks.arcs(Drawings.smooth(random, 0, 0, 5, 9, 7), 0.01));
		double length = track.length();
		for (int run = 0; run < 200; run++) {
			double from = length * (3 * random.nextDouble() - 1);
			double way = 2.5 * length * random.nextDouble();
			List<Move> stretch = track.stretch(from, from + way);
			assertEquals(way, Drawings.length(stretch), 1e-7);
			assertJoined(stretch, 1e-8);
			assertTrue(track.at(from).point().distance(stretch.get(0).start()) < 1e-8);
			assertTrue(track.at(from + way).point().distance(stretch.get(stretch.size() - 1).end()) < 1e-7);
			assertEquals(0, Math.IEEEremainder(track.at(from).heading() - stretch.get(0).startHeading(), 2 * Math.PI), 1e-6);
		}
	}

	private static void check(Cubic cubic, double tolerance) {
		Contour contour = Contour.open(List.of(cubic));
		List<Point> curve = new ArrayList<>();
		for (int i = 0; i <= SAMPLES; i++) {
			curve.add(cubic.at((double) i / SAMPLES));
		}
		double rounding = 1e-9 * (1 + Math.abs(cubic.start().x())) + 1e-9 * cubic.length();
		for (Track track : List.of(Tracks.arcs(contour, tolerance), Tracks.chords(contour, tolerance))) {
			assertJoined(track.moves(), rounding);
			assertTrue(track.start().distance(cubic.start()) <= rounding && track.end().distance(cubic.end()) <= rounding);
			List<Point> places = new ArrayList<>();
			for (Move move : track.moves()) {
				int steps = (int) Math.max(2, SAMPLES * move.length() / track.length());
				for (int i = 0; i <= steps; i++) {
					places.add(move.at(move.length() * i / steps));
				}
			}
			// between samples the polylines are this far from what they stand for, at most
			double slack = rounding + 3e-5 * cubic.length();
			assertTrue(farthest(curve, places) <= tolerance + slack, "curve off the track " + cubic);
			assertTrue(farthest(places, curve) <= tolerance + slack, "track off the curve " + cubic);
		}
	}

	private static double farthest(List<Point> places, List<Point> polyline) {
		double most = 0;
		for (int k = 0; k < places.size(); k += 2) {
			double least = Double.POSITIVE_INFINITY;
			for (int i = 1; i < polyline.size() && least > 0; i++) {
				least = Math.min(least, distance(places.get(k), polyline.get(i - 1), polyline.get(i)));
			}
			most = Math.max(most, least);
		}
		return most;
	}

	static double distance(Point place, Point from, Point to) {
		double dx = to.x() - from.x();
		double dy = to.y() - from.y();
		double square = dx * dx + dy * dy;
		double t = square == 0 ? 0 : ((place.x() - from.x()) * dx + (place.y() - from.y()) * dy) / square;
		t = Math.max(0, Math.min(1, t));
		double x = place.x() - from.x() - t * dx;
		double y = place.y() - from.y() - t * dy;
		return Math.sqrt(x * x + y * y);
	}

	private static void assertJoined(List<Move> moves, double by) {
		for (int i = 1; i < moves.size(); i++) {
			assertTrue(moves.get(i - 1).end().distance(moves.get(i).start()) <= by,
					moves.get(i - 1) + " does not lead to " + moves.get(i));
		}
	}

	private static Point place(SplittableRandom random, double scale) {
		return p(scale * random.nextDouble(), scale * random.nextDouble());
	}

	private static Point p(double x, double y) {
		return new Point(x, y);
	}
}
