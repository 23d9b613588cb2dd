package org.frisket.print.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.frisket.geometry.Point;
import org.frisket.model.MarkKind;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkDesign;
import org.frisket.print.marks.MarkPlacement;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.register.RegisterException;
import org.junit.jupiter.api.Test;

/** What gives a turned sheet away. */
class AsymmetryTest {

	private static final List<Point> CORNERS = List.of(new Point(10, 10), new Point(290, 10), new Point(290, 190),
			new Point(10, 190));

	private static MarkPlan plan(MarkDesign first, Point last) {
		List<Mark> marks = Stream.of(CORNERS.get(0), CORNERS.get(1), CORNERS.get(2), last)
				.map(place -> new Mark(place == CORNERS.get(0) ? first : MarkDesign.USUAL, place, 0)).toList();
		return new MarkPlan(300, 200, 5, marks);
	}

	@Test
	void aRectangleOfDiscsLooksTheSameAfterAHalfTurn() {
		assertEquals(List.of(), Asymmetry.of(plan(MarkDesign.USUAL, CORNERS.get(3))));
	}

	@Test
	void aPennantOrAMarkThatStandsAwayShows() {
		assertEquals(List.of(new Asymmetry(0, CORNERS.get(2), false), new Asymmetry(2, CORNERS.get(0), false)),
				Asymmetry.of(plan(MarkDesign.USUAL.as(MarkKind.PENNANT), CORNERS.get(3))));
		assertEquals(List.of(new Asymmetry(1, CORNERS.get(3), true), new Asymmetry(3, new Point(240, 10), true)),
				Asymmetry.of(plan(MarkDesign.USUAL, new Point(60, 190))));
	}

	@Test
	void proposedMarksAlwaysShow() throws RegisterException {
		for (int count = MarkPlan.LEAST_MARKS; count <= 8; count++) {
			assertFalse(Asymmetry.of(new MarkPlacement(MarkDesign.USUAL, count, 3).propose(297, 210, 5, List.of())).isEmpty());
			assertTrue(Asymmetry.of(new MarkPlacement(MarkDesign.USUAL, count, 3).propose(210, 297, 5, List.of())).stream()
					.anyMatch(odd -> odd.mark() == 0), "the pennant");
		}
	}
}
