package org.frisket.ui.material.internal.runs;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.ui.bench.JobOnBench;

/** Opens the form in which a run of the job on the bench is told of. */
public final class RecordRunHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		JobOnBench bench = Adapters.adapt(HandlerUtil.getActiveEditorChecked(event), JobOnBench.class);
		if (bench != null) {
			new RunDialog(HandlerUtil.getActiveShellChecked(event), bench).open();
		}
		return null;
	}
}
