package org.frisket.ui.views.internal.typecase;

import java.nio.file.Path;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks for a file and writes the chart of what the type case shows there. */
public final class PrintChartHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPart part = HandlerUtil.getActivePartChecked(event);
		if (part instanceof TypeCaseView view && view.canPrint()) {
			FileDialog dialog = new FileDialog(HandlerUtil.getActiveShellChecked(event), SWT.SAVE);
			dialog.setText(Messages.PrintChartHandler_title);
			dialog.setFilterExtensions(new String[] { "*.pdf", "*.png" }); //$NON-NLS-1$ //$NON-NLS-2$
			dialog.setFilterNames(new String[] { Messages.PrintChartHandler_pdf, Messages.PrintChartHandler_png });
			dialog.setFileName(view.chartName() + ".pdf"); //$NON-NLS-1$
			dialog.setOverwrite(true);
			String chosen = dialog.open();
			if (chosen != null) {
				view.print(Path.of(chosen));
			}
		}
		return null;
	}
}
