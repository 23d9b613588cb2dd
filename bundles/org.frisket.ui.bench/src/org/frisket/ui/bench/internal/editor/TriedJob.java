package org.frisket.ui.bench.internal.editor;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.ui.bench.internal.picture.JobPicture;
import org.frisket.ui.bench.internal.picture.PictureMaker;

/** Makes pictures of what is tried on a job, off the UI thread. A newer request calls off the one under way. */
final class TriedJob extends Job {

	private final Display display;
	private final Consumer<JobPicture> client;
	private final AtomicReference<org.frisket.model.Job> latest = new AtomicReference<>();
	private PictureMaker maker;

	/** @param client told on the UI thread, of the newest job only */
	TriedJob(Display display, Consumer<JobPicture> client) {
		super(Messages.TriedJob_name);
		this.display = display;
		this.client = client;
		setSystem(true);
		setPriority(SHORT);
	}

	/** @param tried nobody changes it any more; null calls off what is under way */
	void request(org.frisket.model.Job tried) {
		latest.set(tried);
		cancel();
		if (tried != null) {
			schedule();
		}
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		org.frisket.model.Job tried = latest.get();
		if (tried == null) {
			return Status.CANCEL_STATUS;
		}
		try {
			if (maker == null) {
				maker = new PictureMaker(new JobPreparer(FontLibraries.installed()));
			}
			JobPicture picture = maker.prepare(tried, Tolerance.DEFAULT, monitor::isCanceled, first -> {
				// only the whole is compared
			}).picture();
			if (!display.isDisposed()) {
				display.asyncExec(() -> {
					if (latest.get() == tried) {
						client.accept(picture);
					}
				});
			}
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		} catch (RuntimeException | LinkageError e) {
			ILog.of(TriedJob.class).error(Messages.PictureJob_failed, e);
			return Status.OK_STATUS;
		}
	}
}
