package org.frisket.ui.material.internal.trials;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.frisket.ui.bench.JobOnBench;

/** The job that is worked on beside the page. */
final class FrontJob {

	private FrontJob() {
	}

	/** The id of a job that is open; empty if none is. */
	static String id(IWorkbenchPage page) {
		for (IEditorReference reference : page.getEditorReferences()) {
			JobOnBench bench = Adapters.adapt(reference.getEditor(false), JobOnBench.class);
			if (bench != null) {
				return bench.job().getId();
			}
		}
		return ""; //$NON-NLS-1$
	}
}
