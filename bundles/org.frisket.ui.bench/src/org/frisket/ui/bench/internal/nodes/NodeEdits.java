package org.frisket.ui.bench.internal.nodes;

import org.frisket.editing.shapes.ChangePath;
import org.frisket.geometry.nodes.NodeChange;
import org.frisket.model.Outline;

/** The edits of a job that changes of nodes come to. */
final class NodeEdits {

	private NodeEdits() {
	}

	static ChangePath of(NodeChange change, NodeChange.Outcome outcome, Outline outline) {
		String data = outcome.path().pathData();
		int count = outcome.count();
		return switch (change) {
		case ADD -> ChangePath.nodes(ChangePath.Change.ADD, count, outline, data);
		case DELETE -> ChangePath.nodes(ChangePath.Change.DELETE, count, outline, data);
		case CORNER -> ChangePath.nodes(ChangePath.Change.CORNER, count, outline, data);
		case SMOOTH -> ChangePath.nodes(ChangePath.Change.SMOOTH, count, outline, data);
		case SYMMETRIC -> ChangePath.nodes(ChangePath.Change.SYMMETRIC, count, outline, data);
		case LINE -> ChangePath.lines(outline, data);
		case CURVE -> ChangePath.curves(outline, data);
		case BREAK -> ChangePath.nodes(ChangePath.Change.BREAK, count, outline, data);
		case JOIN -> ChangePath.nodes(ChangePath.Change.JOIN, count, outline, data);
		case CLOSE -> ChangePath.close(outline, data);
		case REVERSE -> ChangePath.reverse(outline, data);
		};
	}
}
