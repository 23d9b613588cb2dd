package org.frisket.ui.bench.internal.export;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.frisket.export.drive.Drive;
import org.frisket.model.Job;
import org.frisket.prepare.Finding;
import org.frisket.ui.bench.LastExports;
import org.frisket.ui.bench.internal.editor.StatusProgress;

/** One export with what is seen of it: progress and cancel in the status line, and how it ended. */
public final class ExportRun implements ExportJob.Client {

	private final Shell shell;
	private final IStatusLineManager line;
	private final StatusProgress bar;
	private final Job snapshot;
	private final Path file;
	private final ExportRequest request;

	/**
	 * @param snapshot a copy that nobody changes any more
	 * @param file     where the job itself is, so that its guests are found; null if it has none yet
	 */
	public ExportRun(Shell shell, IStatusLineManager line, Job snapshot, Path file, ExportRequest request) {
		this.shell = shell;
		this.line = line;
		bar = new StatusProgress(shell, line);
		this.snapshot = snapshot;
		this.file = file;
		this.request = request;
	}

	/** Begins; returns at once. Only for the UI thread. */
	public void start() {
		bar.begin(NLS.bind(Messages.ExportJob_name, request.place()));
		new ExportJob(snapshot, file, request, this).schedule();
	}

	@Override
	public void progress(double fraction) {
		bar.worked(fraction);
	}

	@Override
	public boolean isCancelled() {
		return bar.isCancelled();
	}

	@Override
	public void exported(List<Path> files, Optional<Drive> drive) {
		bar.ended(() -> {
			line.setMessage(ExportNews.exported(files, drive));
			if (!files.isEmpty()) {
				LastExports.add(snapshot, files.get(files.size() - 1));
			}
		});
	}

	@Override
	public void cancelled(List<Path> files, Optional<String> deaf) {
		bar.ended(() -> line.setMessage(ExportNews.cancelled(request, files, deaf)));
	}

	@Override
	public void failed(String message) {
		bar.ended(() -> {
			line.setErrorMessage(NLS.bind(Messages.ExportRun_failed, request.place()));
			MessageDialog.openError(shell, Messages.ExportRun_failedTitle, message);
		});
	}

	@Override
	public void blocked(List<Finding> blocking) {
		bar.ended(() -> {
			int answer = MessageDialog.open(MessageDialog.WARNING, shell, Messages.ExportRun_blockedTitle,
					NLS.bind(Messages.ExportRun_blocked, blocking.size(), blocking.get(0).message()), SWT.NONE,
					Messages.ExportDialog_exportAnyway, Messages.ExportDialog_cancel);
			if (answer == 0) {
				new ExportRun(shell, line, snapshot, file, request.despiteFindings()).start();
			}
		});
	}
}
