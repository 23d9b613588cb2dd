package org.frisket.ui.bench.internal.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.ui.bench.internal.editor.BenchEditor;

/** Shows the bench larger. */
public final class ZoomInHandler extends BenchHandler {

	@Override
	void execute(BenchEditor bench, ExecutionEvent event) {
		bench.zoom().in();
	}
}
