package org.frisket.material.tools;

import java.util.Optional;
import java.util.Set;

import org.frisket.model.OperationKind;

/**
 * A blunt wheel or point that presses a fold line into the sheet.
 *
 * @param width of the line it presses, in mm
 */
public record CreasingWheel(String id, String name, double width) implements Tool {

	@Override
	public ToolKind kind() {
		return ToolKind.CREASING_WHEEL;
	}

	@Override
	public Set<OperationKind> operations() {
		return Set.of(OperationKind.CREASE);
	}

	@Override
	public Optional<Edge> edge() {
		return Optional.empty();
	}

	@Override
	public CreasingWheel withEdge(Edge edge) {
		return this;
	}
}
