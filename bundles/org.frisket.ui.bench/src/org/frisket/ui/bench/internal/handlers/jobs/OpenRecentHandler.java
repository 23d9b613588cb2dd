package org.frisket.ui.bench.internal.handlers.jobs;

import java.nio.file.Path;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobInput;

/** Opens one of the files that were opened or saved last. */
public final class OpenRecentHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		String path = event.getParameter(Bench.OPEN_RECENT_PATH);
		if (path == null) {
			return null;
		}
		try {
			HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage().openEditor(new JobInput(Path.of(path)),
					Bench.EDITOR_ID);
		} catch (PartInitException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
		return null;
	}
}
