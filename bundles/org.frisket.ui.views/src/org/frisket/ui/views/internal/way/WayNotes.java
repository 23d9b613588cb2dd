package org.frisket.ui.views.internal.way;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.Platform;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.LastExports;
import org.frisket.ui.views.RunNote;
import org.frisket.ui.views.SheetsNote;

/** What other bundles know of the job in front; nothing where none brings it. */
final class WayNotes {

	private final Runnable changed;
	private SheetsNote sheets;
	private RunNote run;
	private final List<Runnable> ends = new ArrayList<>();

	/** @param changed told when anything is known otherwise */
	WayNotes(Runnable changed) {
		this.changed = changed;
	}

	/** From now on it is about this job. @param bench null for none */
	void follow(JobOnBench bench) {
		ends.forEach(Runnable::run);
		ends.clear();
		sheets = note(bench, SheetsNote.class);
		run = note(bench, RunNote.class);
		if (sheets != null) {
			ends.add(sheets.watch(changed));
		}
		if (run != null) {
			ends.add(run.watch(changed));
		}
		if (bench != null) {
			ends.add(LastExports.watch(changed));
		}
	}

	private static <T> T note(JobOnBench bench, Class<T> type) {
		return bench == null ? null : type.cast(Platform.getAdapterManager().loadAdapter(bench, type.getName()));
	}

	/** How far its sheets are; empty while that is not known. */
	String sheets() {
		return sheets == null ? "" : sheets.words(); //$NON-NLS-1$
	}

	/** What its runs take; empty while nothing is laid or that is not known. */
	String run() {
		return run == null ? "" : run.words(); //$NON-NLS-1$
	}

	/** Whether that holds for the job as it is now. */
	boolean isRunUpToDate() {
		return run != null && run.isUpToDate();
	}
}
