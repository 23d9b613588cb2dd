package org.frisket.print.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.print.marks.MarkDesign;
import org.frisket.print.marks.MarkPlacement;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.register.MeasuredLengths;
import org.frisket.print.register.MeasuredLengths.Between;
import org.frisket.print.register.RegisterException;
import org.junit.jupiter.api.Test;

/** Lengths that are asked for. */
class LengthPairsTest {

	@Test
	void theyAlwaysSettleTheMarks() throws RegisterException {
		for (int count = MarkPlan.LEAST_MARKS; count <= MarkPlan.MOST_MARKS; count++) {
			List<Point> marks = new MarkPlacement(MarkDesign.USUAL, count, 3).propose(297, 210, 5, List.of()).places();
			List<Between> lengths = LengthPairs.of(marks).stream().map(pair -> new Between(pair.one(), pair.other(),
					marks.get(pair.one()).distance(marks.get(pair.other())))).toList();
			MeasuredLengths found = MeasuredLengths.of(marks, lengths);
			assertTrue(found.redundancy() >= (count == 3 ? 0 : 1), count + " marks");
			for (int i = 0; i < count; i++) {
				assertEquals(0, found.places().get(i).distance(marks.get(i)), 1e-6, "mark " + (i + 1) + " of " + count);
			}
		}
	}

	@Test
	void noMoreAreAskedForThanAPersonMeasures() {
		List<Point> four = List.of(new Point(0, 0), new Point(90, 0), new Point(90, 60), new Point(0, 60));
		assertEquals(6, LengthPairs.of(four).size());
		assertEquals(new LengthPairs.Pair(0, 1), LengthPairs.of(four).get(0));
	}
}
