package org.frisket.material.tools;

import java.util.Optional;
import java.util.Set;

import org.frisket.model.OperationKind;

/**
 * A blade that swivels and is dragged along.
 *
 * @param angle  of its edge to the sheet, in degrees; above 0 and below 90
 * @param offset how far its tip trails behind the axis it swivels on, in mm; not below 0
 */
public record Blade(String id, String name, double angle, double offset, Edge wear) implements Tool {

	public Blade {
		if (!(angle > 0 && angle < 90) || !(offset >= 0)) {
			throw new IllegalArgumentException("a blade of " + angle + "° with an offset of " + offset + " mm");
		}
	}

	@Override
	public ToolKind kind() {
		return ToolKind.BLADE;
	}

	@Override
	public Set<OperationKind> operations() {
		return Set.of(OperationKind.CUT, OperationKind.KISS_CUT, OperationKind.PERFORATE);
	}

	@Override
	public Optional<Edge> edge() {
		return Optional.of(wear);
	}

	@Override
	public Blade withEdge(Edge edge) {
		return new Blade(id, name, angle, offset, edge);
	}

	public Blade withOffset(double other) {
		return new Blade(id, name, angle, other, wear);
	}
}
