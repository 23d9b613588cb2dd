package org.frisket.ui.bench.internal.files;

import java.io.IOException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.frisket.prepare.FontLibraries;
import org.frisket.prepare.JobFonts;
import org.frisket.studio.Studio;

/** Keeps the fonts of a job that was saved in the studio's folder, off the UI thread. */
public final class KeepFontsJob extends Job {

	private final org.frisket.model.Job snapshot;

	/** @param snapshot a copy that nobody changes any more */
	public KeepFontsJob(org.frisket.model.Job snapshot) {
		super("Keep the fonts of a job"); //$NON-NLS-1$
		this.snapshot = snapshot;
		setSystem(true);
		setPriority(DECORATE);
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		try {
			JobFonts.keep(snapshot, FontLibraries.installed(), Studio.folder());
		} catch (IOException e) {
			// the job itself is saved; whoever works without a studio folder is not to be told at every saving
			ILog.of(KeepFontsJob.class).warn("the fonts of a job were not kept: " + e.getMessage(), e); //$NON-NLS-1$
		}
		return Status.OK_STATUS;
	}
}
