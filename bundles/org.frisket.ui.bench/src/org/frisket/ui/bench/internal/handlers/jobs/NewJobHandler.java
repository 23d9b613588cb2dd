package org.frisket.ui.bench.internal.handlers.jobs;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.UntitledInput;

/** Lays a new, empty job on a bench of its own. */
public final class NewJobHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
		try {
			page.openEditor(UntitledInput.next(page), Bench.EDITOR_ID);
		} catch (PartInitException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
		return null;
	}
}
