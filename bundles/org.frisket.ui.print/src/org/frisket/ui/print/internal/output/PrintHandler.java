package org.frisket.ui.print.internal.output;

import java.nio.file.Path;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.model.JobHome;
import org.frisket.model.Sheet;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.internal.editor.JobNames;

/**
 * Asks how the sheets of the job in front are printed and cut; the contribution says whether files or paper are
 * meant.
 */
public final class PrintHandler extends AbstractHandler implements IExecutableExtension {

	private boolean toPaper;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data) {
		toPaper = "paper".equals(data); //$NON-NLS-1$
	}

	@Override
	public Object execute(ExecutionEvent event) {
		IEditorPart editor = HandlerUtil.getActiveEditor(event);
		JobOnBench bench = editor == null ? null : Adapters.adapt(editor, JobOnBench.class);
		if (bench != null) {
			open(editor, bench, shown(HandlerUtil.getActivePart(event), bench));
		}
		return null;
	}

	/** The number of the sheet that a view is about; 0 for none. */
	private int shown(IWorkbenchPart part, JobOnBench bench) {
		Sheet sheet = part == null ? null : Adapters.adapt(part, Sheet.class);
		int index = bench.job().getSheets().indexOf(sheet);
		return index >= 0 ? index + 1 : toPaper && !bench.job().getSheets().isEmpty() ? 1 : 0;
	}

	private void open(IEditorPart editor, JobOnBench bench, int first) {
		Shell shell = editor.getSite().getShell();
		IStatusLineManager line = editor.getEditorSite().getActionBars().getStatusLineManager();
		Path file = Bench.fileOf(bench);
		Path folder = file == null || file.getParent() == null ? JobNames.folder() : file.getParent();
		new PrintAndCutDialog(shell, JobHome.copy(bench.job()), file, folder, first, toPaper, new PrintAndCutDialog.Actions() {

			@Override
			public void write(WriteRun.Request request) {
				new WriteRun(shell, line, request).start();
			}

			@Override
			public void print(PaperRun.Request request) {
				new PaperRun(shell, line, request).start();
			}
		}).open();
	}
}
