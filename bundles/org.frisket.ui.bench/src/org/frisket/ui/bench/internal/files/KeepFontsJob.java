package org.frisket.ui.bench.internal.files;

import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.fonts.JobFonts;
import org.frisket.prepare.fonts.JobFonts.NotKept;
import org.frisket.studio.Studio;

/**
 * Keeps the fonts of a job that was saved in the studio's folder, off the UI thread. One that cannot be kept is spoken
 * of once and then no more: whoever works without a studio folder is not to be told at every saving.
 */
public final class KeepFontsJob extends Job {

	/** Digests of fonts that were spoken of. */
	private static final Set<String> TOLD = ConcurrentHashMap.newKeySet();

	private final org.frisket.model.Job snapshot;
	private final Consumer<String> teller;

	/**
	 * @param snapshot a copy that nobody changes any more
	 * @param teller   takes what is to be said, on any thread
	 */
	public KeepFontsJob(org.frisket.model.Job snapshot, Consumer<String> teller) {
		super("Keep the fonts of a job"); //$NON-NLS-1$
		this.snapshot = snapshot;
		this.teller = teller;
		setSystem(true);
		setPriority(DECORATE);
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		List<NotKept> failed = JobFonts.keep(snapshot, FontLibraries.installed(), Studio.folder()).failed();
		String fresh = failed.stream().filter(font -> TOLD.add(font.digest())).map(KeepFontsJob::sentence)
				.collect(Collectors.joining("; ")); //$NON-NLS-1$
		if (!fresh.isEmpty()) {
			ILog.of(KeepFontsJob.class).warn(fresh);
			teller.accept(fresh);
		}
		return Status.OK_STATUS;
	}

	private static String sentence(NotKept font) {
		return NLS.bind(Messages.KeepFontsJob_notKept, new Object[] { font.font(), font.folder(), font.reason() });
	}
}
