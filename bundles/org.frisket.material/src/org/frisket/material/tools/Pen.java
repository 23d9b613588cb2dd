package org.frisket.material.tools;

import java.util.Optional;
import java.util.Set;

import org.frisket.model.OperationKind;

/**
 * A pen.
 *
 * @param lineWidth in mm
 * @param colour    as #rrggbb
 */
public record Pen(String id, String name, double lineWidth, String colour) implements Tool {

	@Override
	public ToolKind kind() {
		return ToolKind.PEN;
	}

	@Override
	public Set<OperationKind> operations() {
		return Set.of(OperationKind.DRAW);
	}

	@Override
	public Optional<Edge> edge() {
		return Optional.empty();
	}

	@Override
	public Pen withEdge(Edge edge) {
		return this;
	}
}
