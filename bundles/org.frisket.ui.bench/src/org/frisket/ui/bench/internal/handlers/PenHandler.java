package org.frisket.ui.bench.internal.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.nodes.PenTool;

/** Takes up the pen. */
public final class PenHandler extends BenchHandler {

	@Override
	void execute(BenchEditor bench, ExecutionEvent event) {
		bench.typing().end(false);
		bench.nodes().end();
		bench.letters().end();
		PenTool.take(bench.viewer());
	}
}
