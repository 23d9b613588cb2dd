package org.frisket.ui.bench.internal.handlers.inside;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.nodes.PenTool;

/** Takes up the pen. */
public final class PenHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		bench.typing().end(false);
		bench.nodes().end();
		bench.letters().end();
		PenTool.take(bench.viewer());
	}
}
