package org.frisket.ui.bench.internal.handlers.sight;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;

/** Shows the bench so that the whole sheet is seen. */
public final class ZoomFitHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		bench.fit();
	}
}
