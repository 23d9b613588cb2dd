package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.print.marks.MarkPlan;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SheetPartsTest {

	private static final double EXACT = 1e-9;

	private final SampleSheet sample = new SampleSheet();

	private SheetParts parts() {
		return SheetParts.of(sample.job, Map.of(sample.job.getId(), SampleJobs.prepared(sample.job)), Tolerance.DEFAULT,
				Monitor.NONE).get(0);
	}

	@Test
	void aSheetHasABackWhenAnythingIsOnIt() {
		assertFalse(parts().twoSided());
		Layer back = Jobs.addLayer(sample.job, "Back");
		back.setBack(true);
		SampleSheet.outline(back, "M10 0V50", OperationKind.CREASE);
		assertTrue(parts().twoSided());
		assertEquals(List.of(sample.card), parts().parts().stream().map(PartOnSheet::element).toList());
	}

	@Test
	void turnedOverPartsLieOnTheOtherSide() {
		sample.sheet.getPlacements().get(0).setX(70);
		sample.sheet.getPlacements().get(0).setY(60);
		assertBox(new Bounds(90, 35, 170, 85), parts().over(TurnEdge.SIDE, sample.sheet).get(0).room().bounds());
		assertBox(new Bounds(30, 65, 110, 115), parts().over(TurnEdge.HEAD, sample.sheet).get(0).taken());
	}

	private static void assertBox(Bounds expected, Bounds box) {
		assertEquals(expected.minX(), box.minX(), EXACT);
		assertEquals(expected.minY(), box.minY(), EXACT);
		assertEquals(expected.maxX(), box.maxX(), EXACT);
		assertEquals(expected.maxY(), box.maxY(), EXACT);
	}

	/** The pennant has no axis: seen from behind it is another shape, and turned over again the same. */
	@ParameterizedTest
	@EnumSource
	void marksOfTheBackAreThoseOfTheFrontSeenThroughTheSheet(TurnEdge turn) {
		SampleSheet.outline(sample.layer, SampleSheet.CARD, OperationKind.PRINT);
		MarkPlan front = sample.print(PrintOptions.USUAL).plan().orElseThrow();
		MarkPlan back = turn.over(front);
		Transform over = turn.over(front.width(), front.height());
		for (int i = 0; i < front.marks().size(); i++) {
			Region seen = front.marks().get(i).region().transformed(over);
			Region drawn = back.marks().get(i).region();
			assertBox(seen.bounds(), drawn.bounds());
			assertEquals(seen.area(), drawn.area(), EXACT);
			assertTrue(seen.contours().get(0).segments().stream().map(each -> each.start()).allMatch(corner -> drawn.contours()
					.get(0).segments().stream().anyMatch(each -> each.start().distance(corner) < 1e-6)), "mark " + (i + 1));
			assertBox(front.marks().get(i).bounds(), turn.over(back).marks().get(i).bounds());
		}
	}
}
