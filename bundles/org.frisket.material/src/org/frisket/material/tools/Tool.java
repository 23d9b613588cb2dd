package org.frisket.material.tools;

import java.util.Optional;
import java.util.Set;

import org.frisket.model.OperationKind;

/** What a machine holds to work a stock with. */
public sealed interface Tool permits Blade, CreasingWheel, PerforatingBlade, Pen {

	/** Tells this tool from every other of the studio. */
	String id();

	/** As the studio calls it. */
	String name();

	ToolKind kind();

	/** What it can do. */
	Set<OperationKind> operations();

	/** The edge that wears; empty for what does not cut. */
	Optional<Edge> edge();

	/** The same tool with another edge; a tool without one stays as it is. */
	Tool withEdge(Edge edge);
}
