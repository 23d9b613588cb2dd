package org.frisket.ui.bench.internal.export;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.frisket.model.Job;
import org.frisket.prepare.Finding;

/** One export with what is seen of it: progress and cancel in the status line, and how it ended. */
public final class ExportRun implements ExportJob.Client {

	private static final int TICKS = 100;

	private final Shell shell;
	private final Display display;
	private final IStatusLineManager line;
	private final IProgressMonitor bar;
	private final Job snapshot;
	private final ExportRequest request;
	private final AtomicInteger told = new AtomicInteger();

	/** @param snapshot a copy that nobody changes any more */
	public ExportRun(Shell shell, IStatusLineManager line, Job snapshot, ExportRequest request) {
		this.shell = shell;
		display = shell.getDisplay();
		this.line = line;
		bar = line.getProgressMonitor();
		this.snapshot = snapshot;
		this.request = request;
	}

	/** Begins; returns at once. Only for the UI thread. */
	public void start() {
		line.setErrorMessage(null);
		line.setMessage(null);
		line.setCancelEnabled(true);
		bar.setCanceled(false);
		bar.beginTask(NLS.bind(Messages.ExportJob_name, request.target().getFileName()), TICKS);
		new ExportJob(snapshot, request, this).schedule();
	}

	@Override
	public void progress(double fraction) {
		int ticks = (int) (TICKS * fraction);
		int more = ticks - told.get();
		if (more > 0) {
			told.set(ticks);
			onScreen(() -> bar.worked(more));
		}
	}

	@Override
	public boolean isCancelled() {
		return bar.isCanceled();
	}

	@Override
	public void exported(Path target) {
		ended(() -> line.setMessage(NLS.bind(Messages.ExportRun_exported, target)));
	}

	@Override
	public void cancelled() {
		ended(() -> line.setMessage(NLS.bind(Messages.ExportRun_cancelled, request.target())));
	}

	@Override
	public void failed(String message) {
		ended(() -> {
			line.setErrorMessage(NLS.bind(Messages.ExportRun_failed, request.target().getFileName()));
			MessageDialog.openError(shell, Messages.ExportRun_failedTitle, message);
		});
	}

	@Override
	public void blocked(List<Finding> blocking) {
		ended(() -> {
			int answer = MessageDialog.open(MessageDialog.WARNING, shell, Messages.ExportRun_blockedTitle,
					NLS.bind(Messages.ExportRun_blocked, blocking.size(), blocking.get(0).message()), SWT.NONE,
					Messages.ExportDialog_exportAnyway, Messages.ExportDialog_cancel);
			if (answer == 0) {
				new ExportRun(shell, line, snapshot, request.despiteFindings()).start();
			}
		});
	}

	private void ended(Runnable news) {
		onScreen(() -> {
			bar.done();
			line.setCancelEnabled(false);
			news.run();
		});
	}

	private void onScreen(Runnable work) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				if (!shell.isDisposed()) {
					work.run();
				}
			});
		}
	}
}
