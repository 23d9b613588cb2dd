package org.frisket.ui.orders.internal.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;
import org.frisket.model.WholeFile;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderException;
import org.frisket.ui.orders.internal.Pictures;

/** Writes jobs of the order book as files: of one job where somebody says, of several into a folder. */
final class HandOut extends Job {

	private final IWorkbenchWindow window;
	private final Display display;
	private final HandOutKind kind;
	/** By the numbers of the jobs. */
	private final Map<Long, Path> files;

	private HandOut(IWorkbenchWindow window, HandOutKind kind, Map<Long, Path> files) {
		super(kind.title());
		this.window = window;
		display = window.getShell().getDisplay();
		this.kind = kind;
		this.files = files;
	}

	/** Asks where to, and writes them there. */
	static void ask(IWorkbenchWindow window, HandOutKind kind, List<Entry> jobs) {
		Map<Long, Path> files = jobs.size() == 1 ? one(window.getShell(), kind, jobs.get(0).number())
				: several(window.getShell(), kind, jobs);
		if (!files.isEmpty()) {
			new HandOut(window, kind, files).schedule();
		}
	}

	private static Map<Long, Path> one(Shell shell, HandOutKind kind, long number) {
		FileDialog dialog = new FileDialog(shell, SWT.SAVE);
		dialog.setText(kind.title());
		dialog.setFilterExtensions(new String[] { "*" + kind.ending() }); //$NON-NLS-1$
		dialog.setFileName(kind.file(number));
		dialog.setOverwrite(true);
		String path = dialog.open();
		if (path == null) {
			return Map.of();
		}
		boolean ended = path.toLowerCase(Locale.ROOT).endsWith(kind.ending());
		return Map.of(number, Path.of(ended ? path : path + kind.ending()));
	}

	private static Map<Long, Path> several(Shell shell, HandOutKind kind, List<Entry> jobs) {
		DirectoryDialog dialog = new DirectoryDialog(shell, SWT.SAVE);
		dialog.setText(kind.title());
		dialog.setMessage(NLS.bind(Messages.HandOut_folder, jobs.size()));
		String folder = dialog.open();
		if (folder == null) {
			return Map.of();
		}
		Map<Long, Path> files = new LinkedHashMap<>();
		jobs.forEach(job -> files.put(job.number(), Path.of(folder).resolve(kind.file(job.number()))));
		List<Path> there = files.values().stream().filter(Files::exists).toList();
		if (there.isEmpty() || MessageDialog.openQuestion(shell, kind.title(),
				NLS.bind(Messages.HandOut_there, there.size(), there.get(0)))) {
			return files;
		}
		return Map.of();
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		monitor.beginTask(getName(), files.size());
		Path file = null;
		int written = 0;
		try {
			for (Map.Entry<Long, Path> each : files.entrySet()) {
				file = each.getValue();
				if (monitor.isCanceled()) {
					throw new CancellationException();
				}
				kind.write(each.getKey(), file, Pictures.monitor(monitor));
				monitor.worked(1);
				written++;
			}
			say(written == 1 ? NLS.bind(Messages.HandOut_written, file)
					: NLS.bind(Messages.HandOut_writtenAll, written, file.getParent()));
		} catch (CancellationException e) {
			say(NLS.bind(Messages.HandOut_cancelled, written));
		} catch (IOException e) {
			fail(file, WholeFile.reason(e), written);
		} catch (OrderException | IllegalArgumentException e) {
			fail(file, e.getMessage(), written);
		} catch (RuntimeException | LinkageError e) {
			ILog.of(HandOut.class).error(e.toString(), e);
			fail(file, e.toString(), written);
		}
		return Status.OK_STATUS;
	}

	private void say(String text) {
		onUi(() -> StatusWords.say(window, text));
	}

	private void fail(Path file, String reason, int written) {
		onUi(() -> MessageDialog.openError(window.getShell(), kind.title(),
				NLS.bind(Messages.HandOut_failed, new Object[] { file, reason, written })));
	}

	private void onUi(Runnable news) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				if (window.getShell() != null && !window.getShell().isDisposed()) {
					news.run();
				}
			});
		}
	}
}
