package org.frisket.material.advice;

import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.Setup;
import org.frisket.material.trials.StockFacts;
import org.frisket.model.OperationKind;

/** What is to be done, and with what. */
public record Work(StockFacts stock, Machine machine, Tool tool, OperationKind operation) {

	/** @throws IllegalArgumentException if the tool cannot do it */
	public Work {
		if (!tool.operations().contains(operation)) {
			throw new IllegalArgumentException(org.eclipse.osgi.util.NLS.bind(Messages.Work_cannot, tool.name(),
					operation.getLiteral()));
		}
	}

	public Setup setup() {
		return new Setup(machine.id(), tool.id(), operation);
	}
}
