package org.frisket.ui.bench.internal.handlers.inside;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.frisket.geometry.nodes.NodeChange;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.handlers.ElementHandler;
import org.frisket.ui.bench.internal.nodes.NodeMenu;

/** Does something to the selected nodes. */
public final class NodeHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) throws ExecutionException {
		if (bench.nodes().isActive()) {
			bench.nodes().change(ElementHandler.choice(event, NodeMenu.CHANGE, NodeChange.class));
		}
	}
}
