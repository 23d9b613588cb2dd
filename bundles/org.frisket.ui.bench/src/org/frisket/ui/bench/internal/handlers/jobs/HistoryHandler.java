package org.frisket.ui.bench.internal.handlers.jobs;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.history.HistoryPopup;
import org.frisket.ui.bench.internal.history.JobHistory;

/** Lists the steps of the job in front. */
public final class HistoryHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		new HistoryPopup(bench.getSite().getShell(), new JobHistory(bench.commandStack()), bench.viewer().getControl())
				.open();
	}

	@Override
	protected boolean isEnabled(BenchEditor bench) {
		return bench.commandStack().canUndo() || bench.commandStack().canRedo();
	}
}
