package org.frisket.ui.bench.internal.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.ui.bench.internal.editor.BenchEditor;

/** Shows the bench smaller. */
public final class ZoomOutHandler extends BenchHandler {

	@Override
	void execute(BenchEditor bench, ExecutionEvent event) {
		bench.zoom().out();
	}
}
