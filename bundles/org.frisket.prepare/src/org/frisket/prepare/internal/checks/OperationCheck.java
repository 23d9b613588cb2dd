package org.frisket.prepare.internal.checks;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.Wording;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Check;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Trial;
import org.frisket.prepare.internal.cures.StockCures;

/** An element that no tool works, though nothing else stands on it or follows it. */
public final class OperationCheck implements Check {

	private static final String ID = "operation-missing";

	@Override
	public void check(PreparedJob job, LayerLimits limits, Tolerance tolerance, Monitor monitor,
			Consumer<Finding> findings) {
		Set<Element> needed = new HashSet<>();
		for (Element element : Jobs.elements(job.job())) {
			if (element instanceof Mat mat) {
				needed.addAll(mat.getBehind());
			} else if (element instanceof Wording wording && wording.getPath() != null) {
				needed.add(wording.getPath());
			}
		}
		job.elements().filter(element -> element.element().getOperations().isEmpty() && !element.bounds().isEmpty()
				&& !needed.contains(element.element()))
				.forEach(element -> findings.accept(Finding.plain(ID, Severity.NOTE, element.element().getId(),
						element.bounds().centre(), Messages.OperationCheck_none, Messages.OperationCheck_noneCure)));
	}

	@Override
	public List<Cure> cures(Finding finding, Trial trial) {
		return ID.equals(finding.id()) ? StockCures.ofNoOperation(finding, trial) : List.of();
	}
}
