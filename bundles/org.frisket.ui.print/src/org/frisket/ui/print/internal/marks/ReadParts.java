package org.frisket.ui.print.internal.marks;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.print.output.SheetParts;
import org.frisket.sheets.GuestFiles;

/** Works out off the UI thread what lies on the sheets of a job. A newer request calls off the one under way. */
final class ReadParts extends Job {

	/** @param host a copy, which nobody else changes @param file of the job; null if it has none */
	private record Request(org.frisket.model.Job host, PreparedJob prepared, Path file) {
	}

	private final Display display;
	private final Consumer<List<SheetParts>> client;
	private final AtomicReference<Request> latest = new AtomicReference<>();

	/** @param client told on the UI thread, of the newest request only, what lies on each sheet in their order */
	ReadParts(Display display, Consumer<List<SheetParts>> client) {
		super(Messages.ReadParts_name);
		this.display = display;
		this.client = client;
		setSystem(true);
		setPriority(SHORT);
	}

	/** On the UI thread. @param file of the job; null if it has none */
	void request(org.frisket.model.Job job, PreparedJob prepared, Path file) {
		latest.set(new Request(EcoreUtil.copy(job), prepared, file));
		cancel();
		schedule();
	}

	/** Nobody is interested any more. */
	void giveUp() {
		latest.set(null);
		cancel();
	}

	@Override
	protected IStatus run(IProgressMonitor progress) {
		Request request = latest.get();
		if (request == null) {
			return Status.CANCEL_STATUS;
		}
		try {
			List<SheetParts> parts = read(request, progress::isCanceled);
			if (!display.isDisposed()) {
				display.asyncExec(() -> {
					if (latest.get() == request) {
						client.accept(parts);
					}
				});
			}
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		} catch (RuntimeException | LinkageError e) {
			ILog.of(ReadParts.class).error(Messages.ReadParts_failed, e);
			return Status.OK_STATUS;
		}
	}

	private static List<SheetParts> read(Request request, Monitor monitor) {
		Map<String, PreparedJob> jobs = GuestFiles.load(request.host(), request.file()).prepared(request.prepared(),
				new JobPreparer(FontLibraries.installed()), Tolerance.DEFAULT, monitor);
		return SheetParts.of(request.host(), jobs, Tolerance.DEFAULT, monitor);
	}
}
