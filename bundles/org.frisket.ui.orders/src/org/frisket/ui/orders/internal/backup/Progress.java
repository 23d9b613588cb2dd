package org.frisket.ui.orders.internal.backup;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.dialogs.ProgressMonitorDialog;
import org.eclipse.swt.widgets.Shell;
import org.frisket.ui.orders.internal.Words;

/** Work at the whole studio, off the UI thread; while it goes on nothing else can be done here, but it can be called off. */
final class Progress {

	/** What is done. */
	interface Task<T> {

		/** @throws OperationCanceledException if it was called off */
		T run(IProgressMonitor monitor) throws IOException;
	}

	private Progress() {
	}

	/** @param refused title of the window that says why it cannot be done. @return empty if it was not done */
	static <T> Optional<T> run(Shell shell, String name, String refused, Task<T> task) {
		AtomicReference<T> result = new AtomicReference<>();
		try {
			new ProgressMonitorDialog(shell).run(true, true, monitor -> {
				monitor.beginTask(name, IProgressMonitor.UNKNOWN);
				try {
					result.set(task.run(monitor));
				} catch (OperationCanceledException calledOff) {
					throw new InterruptedException();
				} catch (IOException e) {
					throw new InvocationTargetException(e);
				}
			});
			return Optional.of(result.get());
		} catch (InvocationTargetException e) {
			if (!(e.getCause() instanceof IOException)) {
				ILog.of(Progress.class).error(name, e.getCause());
			}
			MessageDialog.openError(shell, refused, Words.sentence(String.valueOf(e.getCause().getMessage())));
		} catch (InterruptedException calledOff) {
			// all is as it was
		}
		return Optional.empty();
	}
}
