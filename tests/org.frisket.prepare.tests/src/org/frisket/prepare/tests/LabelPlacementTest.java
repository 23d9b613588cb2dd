package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.prepare.layout.LabelPlacement;
import org.frisket.prepare.layout.LabelPlacement.Label;
import org.junit.jupiter.api.Test;

class LabelPlacementTest {

	private static final double GAP = 4;

	@Test
	void loneLabelStandsAboveItsThing() {
		List<Bounds> places = LabelPlacement.place(List.of(new Label(new Bounds(10, 50, 90, 80), 30, 12)), GAP);
		assertEquals(List.of(new Bounds(10, 34, 40, 46)), places);
	}

	@Test
	void labelsOfTheSameThingTakeDifferentPlaces() {
		Label label = new Label(new Bounds(10, 50, 90, 80), 30, 12);
		List<Bounds> places = LabelPlacement.place(List.of(label, label), GAP);
		assertEquals(new Bounds(10, 84, 40, 96), places.get(1));
	}

	@Test
	void labelKeepsOffTheBorderOfAnotherThing() {
		Label outer = new Label(new Bounds(0, 0, 200, 100), 30, 12);
		Label inner = new Label(new Bounds(10, 10, 190, 90), 30, 12);
		List<Bounds> places = LabelPlacement.place(List.of(outer, inner), GAP);
		// above or below the inner one there is no room before the outer one's border
		assertEquals(new Bounds(14, 14, 44, 26), places.get(1));
	}

	@Test
	void labelWithoutRoomGoesNowhere() {
		Label label = new Label(new Bounds(0, 0, 5, 5), 40, 12);
		List<Bounds> places = LabelPlacement.place(Collections.nCopies(40, label), GAP);
		assertFalse(places.get(0).isEmpty());
		assertTrue(places.get(39).isEmpty());
		assertEquals(40, places.size());
	}

	@Test
	void nothingIsSaidOfWhatIsNotSeen() {
		assertTrue(LabelPlacement.place(List.of(new Label(Bounds.EMPTY, 40, 12)), GAP).get(0).isEmpty());
		assertTrue(LabelPlacement.place(List.of(), GAP).isEmpty());
	}

	@Test
	void noTwoLabelsComeNearerThanTheGapAndEachIsNearItsThing() {
		for (int seed = 0; seed < 60; seed++) {
			Random random = new Random(seed);
			List<Label> labels = new ArrayList<>();
			for (int i = 0; i < 120; i++) {
				double x = random.nextDouble(-500, 500);
				double y = random.nextDouble(-300, 300);
				labels.add(new Label(new Bounds(x, y, x + random.nextDouble(1, 200), y + random.nextDouble(1, 100)),
						random.nextDouble(10, 120), 14));
			}
			List<Bounds> places = LabelPlacement.place(labels, GAP);
			for (int i = 0; i < places.size(); i++) {
				for (int k = 0; k < i; k++) {
					assertFalse(!places.get(k).isEmpty() && places.get(i).grown(GAP - 1e-9).intersects(places.get(k)),
							"seed " + seed + ": " + i + " and " + k);
				}
				assertTrue(places.get(i).isEmpty()
						|| labels.get(i).thing().grown(GAP + 1e-9).intersects(places.get(i)), "seed " + seed);
			}
			assertTrue(places.stream().filter(place -> !place.isEmpty()).count() > 60);
			assertEquals(places, LabelPlacement.place(labels, GAP));
		}
	}
}
