package org.frisket.ui.bench.internal.editor;

import java.util.concurrent.atomic.AtomicInteger;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.frisket.geometry.Monitor;

/** Progress and cancel in the status line, of work on another thread. */
public final class StatusProgress implements Monitor {

	private static final int TICKS = 100;

	private final Shell shell;
	private final Display display;
	private final IStatusLineManager line;
	private final IProgressMonitor bar;
	private final AtomicInteger told = new AtomicInteger();

	public StatusProgress(Shell shell, IStatusLineManager line) {
		this.shell = shell;
		display = shell.getDisplay();
		this.line = line;
		bar = line.getProgressMonitor();
	}

	/** Only for the UI thread, as the status line itself. */
	public void begin(String task) {
		line.setErrorMessage(null);
		line.setMessage(null);
		line.setCancelEnabled(true);
		bar.setCanceled(false);
		bar.beginTask(task, TICKS);
	}

	@Override
	public boolean isCancelled() {
		return bar.isCanceled();
	}

	@Override
	public void worked(double fraction) {
		int ticks = (int) (TICKS * fraction);
		int more = ticks - told.get();
		if (more > 0) {
			told.set(ticks);
			onScreen(() -> bar.worked(more));
		}
	}

	/** @param news done on the UI thread, if the window is still there */
	public void ended(Runnable news) {
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
