package org.frisket.ui.bench.internal.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.ui.bench.internal.editor.BenchEditor;

/** Shows the bench so that the whole sheet is seen. */
public final class ZoomFitHandler extends BenchHandler {

	@Override
	void execute(BenchEditor bench, ExecutionEvent event) {
		bench.fit();
	}
}
