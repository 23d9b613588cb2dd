package org.frisket.toolpath;

import static org.frisket.toolpath.Drawings.ARCS;
import static org.frisket.toolpath.Drawings.CHORDS;
import static org.frisket.toolpath.Drawings.OFFSET;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.toolpath.RunChoices.Direction;
import org.frisket.toolpath.RunChoices.PassOrder;
import org.frisket.toolpath.RunChoices.Tabs;
import org.frisket.toolpath.blade.TipPath;
import org.junit.jupiter.api.Test;

/**
 * What a tip that trails cuts, by its equation of motion, while the axis is led as planned: the drawing, and all of it.
 */
class TipCutsDrawingTest {

	/** Corners of up to 10 degrees are not swung round, and the tip is off there by d sin 10° at most. */
	private static final double OFF = OFFSET * Math.sin(Math.toRadians(10));

	@Test
	void shapes() {
		SplittableRandom random = new SplittableRandom(8);
		for (int run = 0; run < 24; run++) {
			Contour contour = run % 2 == 0 ? Drawings.jagged(random, 30, 30, 8, 20, 3 + random.nextInt(9))
					: Drawings.smooth(random, 30, 30, 10, 20, 4 + random.nextInt(6));
			Carriage carriage = run % 4 < 2 ? ARCS : CHORDS;
			double leadIn = run % 3 == 0 ? 1 : 0;
			RunChoices choices = new RunChoices(leadIn, 0.3, false, Tabs.NONE, PassOrder.PART, 0, 1, Direction.EITHER, 0, 1);
			Stroke stroke = Drawings.plan(List.of(Drawings.cut("c", contour)), carriage, choices).strokes().toList().get(0);
			List<Point> cut = TipPath.of(stroke.axis(), OFFSET, stroke.tip().get(0).startHeading(), 0.02);
			List<Point> drawn = contour.flattened(1e-3);
			drawn.add(drawn.get(0));
			// the axis is given to within the tolerance; so is the drawing's own polygon, here and as arcs
			double allowed = OFF + 3 * carriage.tolerance();
			assertTrue(farthest(cut, drawn) <= allowed, "run " + run + ": cut off the drawing by " + farthest(cut, drawn));
			assertTrue(farthest(drawn, cut) <= allowed, "run " + run + ": not cut, by " + farthest(drawn, cut));
		}
	}

	/** A blade that points anywhere when it comes down is in line by the start, if the lead-in is long enough: 4 d. */
	@Test
	void theLeadInTurnsTheBlade() {
		RunChoices choices = new RunChoices(1.5, 0.3, false, Tabs.NONE, PassOrder.PART, 0, 1, Direction.EITHER, 0, 1);
		Stroke stroke = Drawings.plan(List.of(Drawings.cut("c", Drawings.box(5, 5, 20, 20))), ARCS, choices).strokes().toList()
				.get(0);
		double along = stroke.tip().get(0).startHeading();
		for (double away : new double[] { 0.5, 1.5, -1.5, 2.5 }) {
			List<Point> cut = TipPath.of(stroke.axis(), OFFSET, along + away, 0.02);
			List<Point> drawn = Drawings.box(5, 5, 20, 20).flattened(1);
			drawn.add(drawn.get(0));
			List<Point> afterLeadIn = cut.subList((int) (1.5 / 0.02), cut.size());
			assertTrue(farthest(afterLeadIn, drawn) <= 0.01, "off by " + farthest(afterLeadIn, drawn));
		}
	}

	private static double farthest(List<Point> places, List<Point> polyline) {
		return places.stream().mapToDouble(place -> {
			double least = Double.POSITIVE_INFINITY;
			for (int i = 1; i < polyline.size(); i++) {
				Point from = polyline.get(i - 1);
				Point way = polyline.get(i).minus(from);
				double t = way.dot(way) == 0 ? 0 : Math.max(0, Math.min(1, place.minus(from).dot(way) / way.dot(way)));
				least = Math.min(least, place.distance(from.plus(way.times(t))));
			}
			return least;
		}).max().orElse(0);
	}
}
