package org.frisket.toolpath.internal.start;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.toolpath.Drawings;
import org.frisket.toolpath.track.MeasuredTrack;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Track;
import org.frisket.toolpath.track.Tracks;
import org.junit.jupiter.api.Test;

class StartPlacesTest {

	@Test
	void inTheMiddleOfEdges() {
		assertArrayEquals(new double[] { 5, 15, 25, 35 }, StartPlaces.of(track(Drawings.box(0, 0, 10, 10)), 1), 1e-12);
		// the short ones have no room for a lead-in of 3 mm
		assertArrayEquals(new double[] { 10, 34 }, StartPlaces.of(track(Drawings.box(0, 0, 20, 4)), 3), 1e-12);
		// an edge with a place on it is one edge, also over the start
		assertArrayEquals(new double[] { 13, 23, 33, 43 },
				StartPlaces.of(track(Drawings.polygon(2, 0, 5, 0, 10, 0, 10, 10, 0, 10, 0, 0)), 1), 1e-12);
	}

	@Test
	void anEdgeWithoutAnyRoomIsBetterThanACorner() {
		assertEquals(1, StartPlaces.of(track(Drawings.polygon(0, 0, 1, 0, 0, 1)), 5).length);
	}

	@Test
	void neverAtACorner() {
		SplittableRandom random = new SplittableRandom(3);
		for (int run = 0; run < 200; run++) {
			Contour contour = run % 2 == 0 ? Drawings.jagged(random, 0, 0, 5, 20, 3 + random.nextInt(40))
					: Drawings.smooth(random, 0, 0, 5, 20, 3 + random.nextInt(20));
			MeasuredTrack track = track(contour);
			double[] places = StartPlaces.of(track, 0.5);
			assertTrue(places.length > 0);
			for (double place : places) {
				List<Move> around = track.stretch(place - 1e-4, place + 1e-4);
				for (int i = 1; i < around.size(); i++) {
					assertEquals(0, Track.turn(around.get(i - 1), around.get(i)), 1e-3);
				}
			}
		}
	}

	@Test
	void tabsAreEvenlySpread() {
		List<List<Move>> pieces = TabPlaces.pieces(track(Drawings.circle(0, 0, 10)), 4, 0.5);
		assertEquals(4, pieces.size());
		for (List<Move> piece : pieces) {
			assertEquals(5 * Math.PI - 0.5, Drawings.length(piece), 0.02);
		}
		List<List<Move>> square = TabPlaces.pieces(track(Drawings.box(0, 0, 10, 10)), 4, 0.5);
		square.forEach(piece -> assertEquals(9.5, Drawings.length(piece), 1e-9));
	}

	@Test
	void tabsStandAsideOfCorners() {
		SplittableRandom random = new SplittableRandom(4);
		for (int run = 0; run < 150; run++) {
			Contour contour = Drawings.jagged(random, 0, 0, 10, 20, 3 + random.nextInt(12));
			MeasuredTrack track = track(contour);
			double width = 0.3 + random.nextDouble();
			int count = 1 + random.nextInt(6);
			List<List<Move>> pieces = TabPlaces.pieces(track, count, width);
			double left = pieces.stream().mapToDouble(Drawings::length).sum();
			assertTrue(pieces.size() <= count);
			if (!pieces.isEmpty()) {
				assertEquals(track.length() - pieces.size() * width, left, 1e-6);
			}
			for (int i = 0; i < pieces.size(); i++) {
				List<Move> next = pieces.get((i + 1) % pieces.size());
				Point from = pieces.get(i).get(pieces.get(i).size() - 1).end();
				// a gap without a corner is as wide as it is long
				assertEquals(width, from.distance(next.get(0).start()), 1e-9);
				Move first = next.get(0);
				assertTrue(first.length() > width / 2 - 1e-9 || Math.abs(Track.turn(first, next.get(1))) < Math.toRadians(5));
			}
		}
	}

	@Test
	void noTabsWhereThereIsNoRoom() {
		assertEquals(List.of(), TabPlaces.pieces(track(Drawings.box(0, 0, 1, 1)), 2, 1));
		assertEquals(List.of(), TabPlaces.pieces(track(Drawings.box(0, 0, 10, 10)), 0, 1));
		assertTrue(TabPlaces.pieces(track(Drawings.box(0, 0, 10, 10)), 100, 2).size() <= 8);
	}

	private static MeasuredTrack track(Contour contour) {
		return new MeasuredTrack(Tracks.arcs(contour, 0.01));
	}
}
