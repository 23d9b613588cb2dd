package org.frisket.ui.bench.internal.handlers.inside;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.handlers.ElementHandler;

/** Selects the next node of the path, or the one before. */
public final class NodeStepHandler extends BenchHandler {

	private static final String WAY = "org.frisket.ui.bench.command.nodeStep.way"; //$NON-NLS-1$

	private enum Way {
		NEXT, PREVIOUS
	}

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) throws ExecutionException {
		if (bench.nodes().isActive()) {
			bench.nodes().step(ElementHandler.choice(event, WAY, Way.class) == Way.NEXT);
		}
	}
}
