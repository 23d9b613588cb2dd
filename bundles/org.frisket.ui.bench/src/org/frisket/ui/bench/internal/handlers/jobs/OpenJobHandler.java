package org.frisket.ui.bench.internal.handlers.jobs;

import java.nio.file.Path;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.model.JobFile;
import org.frisket.ui.bench.Bench;

/** Asks for job files and lays each on a bench of its own. */
public final class OpenJobHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
		FileDialog dialog = new FileDialog(window.getShell(), SWT.OPEN | SWT.MULTI);
		dialog.setText(Messages.OpenJobHandler_title);
		dialog.setFilterExtensions(new String[] { "*" + JobFile.ENDING, ImportHandler.endings(), "*" }); //$NON-NLS-1$ //$NON-NLS-2$
		dialog.setFilterNames(new String[] { Messages.OpenJobHandler_jobFiles, Messages.ImportHandler_artFiles, Messages.OpenJobHandler_allFiles });
		if (dialog.open() != null) {
			for (String name : dialog.getFileNames()) {
				open(window, Path.of(dialog.getFilterPath(), name));
			}
		}
		return null;
	}

	private static void open(IWorkbenchWindow window, Path path) throws ExecutionException {
		try {
			Bench.open(window.getActivePage(), path);
		} catch (PartInitException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
	}
}
