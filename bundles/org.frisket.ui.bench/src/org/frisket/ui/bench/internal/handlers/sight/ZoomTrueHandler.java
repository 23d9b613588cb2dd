package org.frisket.ui.bench.internal.handlers.sight;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;

/** Shows the bench at true size. */
public final class ZoomTrueHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		bench.zoom().trueSize();
	}
}
