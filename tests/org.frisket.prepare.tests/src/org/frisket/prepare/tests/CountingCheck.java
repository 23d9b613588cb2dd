package org.frisket.prepare.tests;

import java.util.List;
import java.util.function.Consumer;

import org.frisket.editing.elements.RenameElements;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Element;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Trial;

/** A check from another bundle: notes every element that is not called counted, and offers to call it so. */
public final class CountingCheck implements Check {

	private static final String COUNTED = "counted";

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		job.elements().filter(element -> !COUNTED.equals(element.element().getName())).forEach(element -> findings.accept(Finding.plain("seen", Severity.NOTE,
				element.element().getId(), element.bounds().centre(), "Seen.", "None needed.")));
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return !finding.id().equals("seen") ? List.of()
				: List.of(Cure.of("Count it no more", finding.element(), Element.class,
						element -> new RenameElements(List.of(element), COUNTED)),
						Cure.of("Do nothing of use", finding.element(), Element.class,
								element -> new RenameElements(List.of(element), "useless")));
	}
}
