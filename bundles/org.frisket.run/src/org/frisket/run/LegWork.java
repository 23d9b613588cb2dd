package org.frisket.run;

import java.util.List;

import org.frisket.material.advice.Caution;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.Settings;

/**
 * How a leg of a run is worked.
 *
 * @param settings in the steps of the machine
 * @param reasons  for them, in the user's language
 * @param cautions what to mind, the gravest first
 */
public record LegWork(Tool tool, Settings settings, List<String> reasons, List<Caution> cautions) {

	public LegWork {
		reasons = List.copyOf(reasons);
		cautions = List.copyOf(cautions);
	}
}
