package org.frisket.ui.material.internal.trials;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.frisket.material.tools.Machine;
import org.frisket.material.trials.TestSheet;
import org.frisket.material.trials.VerdictChart;
import org.frisket.model.WholeFile;

/** Writes the verdicts of a sheet as a picture. */
final class ChartFile {

	private ChartFile() {
	}

	/** Asks where to, and writes there; what came of it is told on the UI thread. */
	static void ask(Shell shell, TestSheet sheet, Machine machine, Consumer<String> told) {
		FileDialog dialog = new FileDialog(shell, SWT.SAVE);
		dialog.setFilterExtensions(new String[] { "*.svg" }); //$NON-NLS-1$
		dialog.setFileName(sheet.id() + ".svg"); //$NON-NLS-1$
		dialog.setOverwrite(true);
		String chosen = dialog.open();
		if (chosen != null) {
			write(shell.getDisplay(), Path.of(chosen), sheet, machine, told);
		}
	}

	private static void write(Display display, Path file, TestSheet sheet, Machine machine, Consumer<String> told) {
		Job.createSystem(NLS.bind(Messages.ChartFile_name, file), (IProgressMonitor monitor) -> {
			String said;
			try {
				byte[] svg = VerdictChart.svg(sheet, machine).getBytes(StandardCharsets.UTF_8);
				WholeFile.write(out -> out.write(svg), file);
				said = NLS.bind(Messages.ChartFile_written, file);
			} catch (IOException e) {
				said = NLS.bind(Messages.ChartFile_failed, file, WholeFile.reason(e));
			}
			String message = said;
			display.asyncExec(() -> told.accept(message));
		}).schedule();
	}
}
