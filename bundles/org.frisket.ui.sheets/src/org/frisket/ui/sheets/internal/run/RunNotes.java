package org.frisket.ui.sheets.internal.run;

import org.eclipse.core.runtime.IAdapterFactory;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.views.RunNote;

/** Has the way say what the run of the job on a bench takes. */
public final class RunNotes implements IAdapterFactory {

	@Override
	public <T> T getAdapter(Object bench, Class<T> wanted) {
		return wanted == RunNote.class && bench instanceof JobOnBench job ? wanted.cast(BenchRun.of(job)) : null;
	}

	@Override
	public Class<?>[] getAdapterList() {
		return new Class<?>[] { RunNote.class };
	}
}
