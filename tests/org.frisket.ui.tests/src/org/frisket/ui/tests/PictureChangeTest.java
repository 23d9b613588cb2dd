package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.OperationKind;
import org.frisket.ui.bench.internal.picture.ElementPicture;
import org.frisket.ui.bench.internal.picture.FlatCurves;
import org.frisket.ui.bench.internal.picture.PictureChange;
import org.frisket.ui.bench.internal.picture.SeenPart;
import org.junit.jupiter.api.Test;

/** What is painted anew when a picture changes, and what of a picture is painted in a window. */
class PictureChangeTest {

	private static ElementPicture picture(Outline curves) {
		return picture(curves, Transform.IDENTITY);
	}

	private static ElementPicture picture(Outline curves, Transform placement) {
		return new ElementPicture(curves, new FlatCurves(curves, 0.01), Outline.EMPTY, placement,
				Set.of(OperationKind.CUT));
	}

	/** A closed contour of cubics about a place, as wild as chance has it. */
	private static Contour blob(Random random, double x, double y, double size, int segments) {
		List<Point> corners = new ArrayList<>();
		for (int i = 0; i < segments; i++) {
			corners.add(new Point(x + size * random.nextDouble(), y + size * random.nextDouble()));
		}
		List<Cubic> cubics = new ArrayList<>();
		for (int i = 0; i < segments; i++) {
			cubics.add(new Cubic(corners.get(i), new Point(x + size * random.nextDouble(), y + size * random.nextDouble()),
					new Point(x + size * random.nextDouble(), y + size * random.nextDouble()),
					corners.get((i + 1) % segments)));
		}
		return Contour.closed(cubics);
	}

	private static Contour comb(double lastTooth) {
		return Contour.polygon(List.of(new Point(0, 0), new Point(100, 0), new Point(100, 10), new Point(95, lastTooth),
				new Point(90, 10), new Point(0, 10)));
	}

	@Test
	void onlyTheEndOfOneContourThatChangedIsPaintedAgain() {
		ElementPicture before = picture(Outline.of(comb(20)));
		ElementPicture after = picture(Outline.of(comb(30)));

		assertEquals(Optional.of(new Bounds(90, 10, 100, 30)), PictureChange.between(before, after, false));
		assertEquals(Optional.of(new Bounds(0, 0, 100, 30)), PictureChange.between(before, after, true),
				"the dashes behind a change are others too");
	}

	@Test
	void nothingIsPaintedAgainWhereNothingChanged() {
		assertEquals(Optional.of(Bounds.EMPTY),
				PictureChange.between(picture(Outline.of(comb(20))), picture(Outline.of(comb(20))), false));
	}

	@Test
	void allIsPaintedAgainWhereMoreThanContoursChanged() {
		Outline curves = Outline.of(comb(20));
		assertTrue(PictureChange.between(picture(curves), picture(curves, Transform.translation(1, 0)), false).isEmpty());
		assertTrue(PictureChange.between(ElementPicture.NONE, picture(curves), false).isEmpty());
		ElementPicture drawn = new ElementPicture(curves, new FlatCurves(curves, 0.01), Outline.EMPTY,
				Transform.IDENTITY, Set.of(OperationKind.DRAW));
		assertTrue(PictureChange.between(picture(curves), drawn, false).isEmpty());
	}

	@Test
	void outsideTheBoxEveryPlaceIsFilledAsBefore() {
		Random random = new Random(77);
		int outside = 0;
		int unlike = 0;
		for (int round = 0; round < 60; round++) {
			List<Contour> kept = List.of(blob(random, 0, 0, 60, 6), blob(random, 20, 20, 60, 5));
			Outline old = new Outline(kept).plus(Outline.of(blob(random, 30, 30, 20, 4)));
			Outline anew = new Outline(kept).plus(Outline.of(blob(random, 40, 30, 20, 4)));
			ElementPicture before = picture(old);
			ElementPicture after = picture(anew);
			Bounds box = PictureChange.between(before, after, false).orElseThrow();
			for (int i = 0; i < 100; i++) {
				Point place = new Point(80 * random.nextDouble(), 80 * random.nextDouble());
				boolean same = before.flat().contains(place) == after.flat().contains(place);
				assertTrue(same || box.contains(place), "round " + round + " at " + place);
				outside += box.contains(place) ? 0 : 1;
				unlike += same ? 0 : 1;
			}
		}
		assertTrue(outside > 1000 && unlike > 50, outside + " places outside, " + unlike + " unlike");
	}

	@Test
	void whatIsSeenInAWindowIsSeenOfItsPartToo() {
		Random random = new Random(78);
		int inside = 0;
		int fewer = 0;
		for (int round = 0; round < 200; round++) {
			Outline outline = Outline.of(blob(random, 0, 0, 80, 9), blob(random, 30, 10, 50, 7));
			double x = 90 * random.nextDouble() - 10;
			double y = 90 * random.nextDouble() - 10;
			Bounds window = new Bounds(x, y, x + 12, y + 9);
			Outline part = SeenPart.of(outline, window);
			FlatCurves whole = new FlatCurves(outline, 0.001);
			FlatCurves seen = new FlatCurves(part, 0.001);
			for (int i = 0; i < 40; i++) {
				Point place = new Point(x + 1 + 10 * random.nextDouble(), y + 1 + 7 * random.nextDouble());
				assertEquals(whole.contains(place), seen.contains(place), "round " + round + " at " + place);
				assertEquals(whole.touches(place, 0.9), seen.touches(place, 0.9), "round " + round + " at " + place);
				inside += whole.contains(place) ? 1 : 0;
			}
			fewer += part.nodeCount() < outline.nodeCount() ? 1 : 0;
		}
		assertTrue(inside > 500 && fewer > 100, inside + " inside, " + fewer + " with fewer nodes");
	}

	@Test
	void whatGoesRoundAWindowStillFillsIt() {
		Contour round = Contour.polygon(List.of(new Point(0, 0), new Point(50, -3), new Point(100, 0),
				new Point(103, 50), new Point(100, 100), new Point(50, 103), new Point(0, 100), new Point(-3, 50)));
		Outline part = SeenPart.of(Outline.of(round), new Bounds(40, 40, 60, 60));

		assertTrue(new FlatCurves(part, 0.01).contains(new Point(50, 50)));
		assertTrue(part.nodeCount() < round.nodeCount(), "what lies out of sight is left out: " + part);
		assertFalse(SeenPart.of(Outline.of(round), new Bounds(40, 40, 60, 60)).isEmpty());
		assertTrue(SeenPart.of(Outline.of(round), new Bounds(200, 40, 260, 60)).isEmpty());
	}
}
