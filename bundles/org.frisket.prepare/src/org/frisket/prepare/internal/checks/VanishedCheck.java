package org.frisket.prepare.internal.checks;

import java.util.function.Consumer;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Mat;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.LayerLimits;

/** An element that was drawn, but is so small for the tolerance that nothing of it is left to work. */
public final class VanishedCheck implements Check {

	private static final String ID = "nothing-left";

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		// where a step has said why there is nothing, that is enough
		job.elements().filter(element -> isGone(element) && element.findings().isEmpty()).forEach(element -> {
			Outline drawn = element.uncleaned().curves().transformed(element.uncleaned().placement());
			findings.accept(Finding.plain(ID, Severity.BLOCKING, element.element().getId(), drawn.bounds().centre(),
					Messages.VanishedCheck_gone, Messages.VanishedCheck_goneCure));
		});
	}

	private static boolean isGone(PreparedElement element) {
		return element.region().isEmpty() && element.lines().isEmpty() && !(element.element() instanceof Mat)
				&& !element.element().getOperations().isEmpty() && !element.uncleaned().curves().isEmpty();
	}
}
