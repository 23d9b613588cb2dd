package org.frisket.prepare.repair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairStep;
import org.frisket.prepare.extension.Contribution;
import org.junit.jupiter.api.Test;

/** The steps of repair as they are contributed. */
class RepairStepsTest {

	@Test
	void stepsStandInTheRecommendedOrderAndHaveNames() throws Exception {
		assertEquals(List.of("doubled", "chain", "close", "areas", "unite", "gaps", "specks", "refit", "level"),
				RepairSteps.all().stream().map(step -> step.id().replace("org.frisket.geometry.", "")).toList());
		for (Contribution<RepairStep> step : RepairSteps.all()) {
			assertFalse(RepairSteps.name(step).startsWith("%") || RepairSteps.name(step).equals(step.id()), step.id());
			for (Option option : RepairSteps.options(step)) {
				assertFalse(option.description().isBlank(), option.name());
			}
		}
	}

	@Test
	void courseTakesOptionsOfAnyStep() throws Exception {
		Artwork open = new Artwork(List.of(), PathData.parse("M0 0H10V10H0V0.5").contours());
		Tolerance tolerance = Tolerance.DEFAULT;
		assertEquals(open, RepairSteps.run(RepairSteps.course(Map.of()), open, tolerance, Monitor.NONE).artwork());
		Mended closed = RepairSteps.run(RepairSteps.course(Map.of("reach", "0.5mm")), open, tolerance, Monitor.NONE);
		assertEquals(List.of(), closed.artwork().lines());
		assertEquals(1, closed.artwork().areas().size());
		assertTrue(assertThrows(IllegalArgumentException.class, () -> RepairSteps.course(Map.of("polish", "yes")))
				.getMessage().contains("polish"));
	}
}
