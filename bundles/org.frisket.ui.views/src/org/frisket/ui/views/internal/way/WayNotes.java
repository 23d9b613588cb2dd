package org.frisket.ui.views.internal.way;

import org.eclipse.core.runtime.Platform;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.views.SheetsNote;

/** What other bundles know of the job in front; nothing where none brings it. */
final class WayNotes {

	private final Runnable changed;
	private SheetsNote sheets;
	private Runnable end = () -> { };

	/** @param changed told when anything is known otherwise */
	WayNotes(Runnable changed) {
		this.changed = changed;
	}

	/** From now on it is about this job. @param bench null for none */
	void follow(JobOnBench bench) {
		end.run();
		end = () -> { };
		sheets = bench == null ? null
				: (SheetsNote) Platform.getAdapterManager().loadAdapter(bench, SheetsNote.class.getName());
		if (sheets != null) {
			end = sheets.watch(changed);
		}
	}

	/** How far its sheets are; empty while that is not known. */
	String sheets() {
		return sheets == null ? "" : sheets.words(); //$NON-NLS-1$
	}
}
