package org.frisket.ui.bench.internal.handlers.sight;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;

/** Shows the bench larger. */
public final class ZoomInHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		bench.zoom().in();
	}
}
