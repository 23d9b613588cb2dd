package org.frisket.ui.print.internal.output;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;
import org.frisket.export.plan.StudioWorkshop;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.print.output.WholeSet;
import org.frisket.print.register.RegisterException;
import org.frisket.studio.Studio;
import org.frisket.toolpath.RunChoices;
import org.frisket.ui.bench.internal.editor.StatusProgress;

/** Writes the files of sheets off the UI thread, with progress and cancel in the status line, all of them or none. */
public final class WriteRun extends Job {

	/**
	 * What is to be written.
	 *
	 * @param options of the format @param machine id of it; empty for the one most likely meant @param folder they go to
	 */
	public record Request(WholeSet set, Map<String, String> options, String machine, Path folder) {
	}

	private final Shell shell;
	private final IStatusLineManager line;
	private final Request request;
	private final StatusProgress bar;

	public WriteRun(Shell shell, IStatusLineManager line, Request request) {
		super(NLS.bind(Messages.WriteRun_name, request.folder()));
		this.shell = shell;
		this.line = line;
		this.request = request;
		bar = new StatusProgress(shell, line);
	}

	/** Begins; returns at once. Only for the UI thread. */
	public void start() {
		bar.begin(getName());
		schedule();
	}

	@Override
	protected IStatus run(IProgressMonitor progress) {
		Monitor monitor = new Monitor() {

			@Override
			public boolean isCancelled() {
				return progress.isCanceled() || bar.isCancelled();
			}

			@Override
			public void worked(double fraction) {
				bar.worked(fraction);
			}
		};
		try {
			List<Path> files = request.set().write(request.options(), new StudioWorkshop(Studio.folder(), request.machine()),
					RunChoices.plain(), Tolerance.DEFAULT, monitor);
			bar.ended(() -> line.setMessage(NLS.bind(Messages.WriteRun_done, files.size(), request.folder())));
		} catch (CancellationException e) {
			bar.ended(() -> line.setMessage(Messages.WriteRun_cancelled));
		} catch (IOException | RegisterException | IllegalArgumentException e) {
			failed(e.getMessage());
		} catch (ContributionException | RuntimeException | LinkageError e) {
			ILog.of(WriteRun.class).error(e.toString(), e);
			failed(e instanceof ContributionException ? e.getMessage() : e.toString());
		}
		return Status.OK_STATUS;
	}

	private void failed(String message) {
		bar.ended(() -> {
			line.setErrorMessage(Messages.WriteRun_failed);
			MessageDialog.openError(shell, Messages.WriteRun_failedTitle, NLS.bind(Messages.WriteRun_nothing, message));
		});
	}
}
