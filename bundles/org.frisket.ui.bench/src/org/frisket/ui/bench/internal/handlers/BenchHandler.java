package org.frisket.ui.bench.internal.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.ui.bench.internal.editor.BenchEditor;

/** A command on the bench in front; nothing happens where there is none, or where its job could not be read. */
public abstract class BenchHandler extends AbstractHandler {

	@Override
	public final Object execute(ExecutionEvent event) throws ExecutionException {
		if (HandlerUtil.getActiveEditor(event) instanceof BenchEditor bench && bench.document() != null) {
			execute(bench, event);
		}
		return null;
	}

	protected abstract void execute(BenchEditor bench, ExecutionEvent event) throws ExecutionException;

	@Override
	public void setEnabled(Object evaluationContext) {
		BenchEditor bench = front();
		setBaseEnabled(bench != null && isEnabled(bench));
	}

	/** Whether the command makes sense now. */
	protected boolean isEnabled(BenchEditor bench) {
		return true;
	}

	/** The bench in front, if its job could be read; else null. */
	protected static BenchEditor front() {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		if (window != null && window.getActivePage() != null
				&& window.getActivePage().getActiveEditor() instanceof BenchEditor bench && bench.document() != null) {
			return bench;
		}
		return null;
	}
}
