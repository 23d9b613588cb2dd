package org.frisket.prepare.repair;

import java.util.List;
import java.util.Map;

import org.frisket.geometry.repair.RepairStep;
import org.frisket.prepare.extension.Contribution;

/**
 * A step that is to be taken.
 *
 * @param options texts by option name; defaults for what is missing
 */
public record StepChoice(Contribution<RepairStep> step, Map<String, String> options) {

	public StepChoice {
		options = Map.copyOf(options);
	}

	/** All steps with their defaults, in the recommended order. */
	public static List<StepChoice> recommended() {
		return RepairSteps.all().stream().map(step -> new StepChoice(step, Map.of())).toList();
	}
}
