package org.frisket.ui.sheets.internal.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.frisket.model.WholeFile;
import org.frisket.run.paper.RunSheet;

/** Writes a run on paper, for whoever stands at the machine: a whole file or none. */
final class RunSheetFile {

	private static final String ENDING = ".pdf"; //$NON-NLS-1$

	private RunSheetFile() {
	}

	/** Asks where to. */
	static Optional<Path> ask(Shell shell, SheetRun run) {
		FileDialog dialog = new FileDialog(shell, SWT.SAVE);
		dialog.setText(Messages.RunSheetFile_title);
		dialog.setFilterExtensions(new String[] { "*" + ENDING }); //$NON-NLS-1$
		dialog.setFileName(name(run));
		dialog.setOverwrite(true);
		return Optional.ofNullable(dialog.open()).map(Path::of);
	}

	private static String name(SheetRun run) {
		org.frisket.model.Job job = run.content().job();
		String number = job.getNumber() == null || job.getNumber().isBlank() ? job.getId() : job.getNumber();
		String sheet = run.sheet().isEmpty() ? "" : '-' + run.sheet(); //$NON-NLS-1$
		return (NLS.bind(Messages.RunSheetFile_name, number) + sheet).replaceAll("[^\\p{L}\\p{N}._-]+", "-") + ENDING; //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** What came of it is told on the UI thread. */
	static void write(Display display, Path file, SheetRun run, Consumer<String> told) {
		Job.createSystem(NLS.bind(Messages.RunSheetFile_writing, file), (IProgressMonitor monitor) -> {
			String said;
			try {
				WholeFile.write(out -> RunSheet.write(run.playback().run(), run.content(), run.cost(), out), file);
				said = NLS.bind(Messages.RunSheetFile_written, file);
			} catch (IOException e) {
				said = NLS.bind(Messages.RunSheetFile_failed, file, WholeFile.reason(e));
			} catch (RuntimeException | LinkageError e) {
				ILog.of(RunSheetFile.class).error(e.toString(), e);
				said = NLS.bind(Messages.RunSheetFile_failed, file, e.getMessage());
			}
			String message = said;
			if (!display.isDisposed()) {
				display.asyncExec(() -> told.accept(message));
			}
		}).schedule();
	}
}
