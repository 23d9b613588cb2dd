package org.frisket.run;

import java.util.List;

import org.frisket.material.StockFamily;
import org.frisket.material.advice.Caution;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.StockFacts;

/**
 * How a leg of a run is worked.
 *
 * @param stock    that is worked
 * @param basis    what the settings rest on
 * @param settings in the steps of the machine; their passes are among the strokes of the leg already, so that the machine
 *                 itself is set to one
 * @param reasons  for them, in the user's language
 * @param cautions what to mind, the gravest first
 */
public record LegWork(Tool tool, StockFacts stock, Basis basis, Settings settings, List<String> reasons,
		List<Caution> cautions) {

	/** What settings rest on. */
	public enum Basis {
		/** A run that went well. */
		RUN,
		/** Trials of the studio. */
		TRIALS,
		/** Rules of thumb. */
		RULES
	}

	public LegWork {
		reasons = List.copyOf(reasons);
		cautions = List.copyOf(cautions);
	}

	/** By rules of thumb, for a card of which nothing is known. */
	public LegWork(Tool tool, Settings settings, List<String> reasons, List<Caution> cautions) {
		this(tool, StockFacts.of(StockFamily.CARD, 0, 0), Basis.RULES, settings, reasons, cautions);
	}
}
