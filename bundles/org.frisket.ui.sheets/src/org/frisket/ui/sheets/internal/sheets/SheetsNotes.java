package org.frisket.ui.sheets.internal.sheets;

import org.eclipse.core.runtime.IAdapterFactory;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.views.SheetsNote;

/** Has the way say how far the sheets of the job on a bench are. */
public final class SheetsNotes implements IAdapterFactory {

	@Override
	public <T> T getAdapter(Object bench, Class<T> wanted) {
		return wanted == SheetsNote.class && bench instanceof JobOnBench job ? wanted.cast(new BenchSheets(job)) : null;
	}

	@Override
	public Class<?>[] getAdapterList() {
		return new Class<?>[] { SheetsNote.class };
	}
}
