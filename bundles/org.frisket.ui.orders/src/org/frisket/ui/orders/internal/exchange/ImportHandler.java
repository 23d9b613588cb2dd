package org.frisket.ui.orders.internal.exchange;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.model.JobFile;

/** Asks for a table of orders, or for files of jobs, and takes in what they hold. */
public final class ImportHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
		FileDialog dialog = new FileDialog(window.getShell(), SWT.OPEN | SWT.MULTI);
		dialog.setText(Messages.ImportHandler_title);
		dialog.setFilterNames(new String[] { Messages.ImportHandler_all, Messages.ImportHandler_tables,
				Messages.ImportHandler_jobs });
		dialog.setFilterExtensions(new String[] { "*.csv;*.tsv;*" + JobFile.ENDING, "*.csv;*.tsv", //$NON-NLS-1$ //$NON-NLS-2$
				"*" + JobFile.ENDING }); //$NON-NLS-1$
		if (dialog.open() != null) {
			List<Path> files = Arrays.stream(dialog.getFileNames()).map(name -> Path.of(dialog.getFilterPath()).resolve(name))
					.toList();
			Arrivals.takeIn(window, files);
		}
		return null;
	}
}
