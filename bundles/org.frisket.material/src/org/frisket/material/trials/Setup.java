package org.frisket.material.trials;

import java.util.Objects;

import org.frisket.model.OperationKind;

/**
 * What a trial was made with; only trials with the same setup can be compared.
 *
 * @param machine id of the machine
 * @param tool    id of the tool
 */
public record Setup(String machine, String tool, OperationKind operation) {

	public Setup {
		Objects.requireNonNull(machine);
		Objects.requireNonNull(tool);
		Objects.requireNonNull(operation);
	}
}
