package org.frisket.material.tools;

import java.util.Optional;
import java.util.Set;

import org.frisket.model.OperationKind;

/**
 * A toothed wheel that leaves ties between its cuts.
 *
 * @param cut length of one cut in mm
 * @param tie length left between two cuts in mm
 */
public record PerforatingBlade(String id, String name, double cut, double tie, Edge wear) implements Tool {

	@Override
	public ToolKind kind() {
		return ToolKind.PERFORATING_BLADE;
	}

	@Override
	public Set<OperationKind> operations() {
		return Set.of(OperationKind.PERFORATE);
	}

	@Override
	public Optional<Edge> edge() {
		return Optional.of(wear);
	}

	@Override
	public PerforatingBlade withEdge(Edge edge) {
		return new PerforatingBlade(id, name, cut, tie, edge);
	}
}
