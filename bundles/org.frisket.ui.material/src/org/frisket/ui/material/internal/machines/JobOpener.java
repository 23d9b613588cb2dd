package org.frisket.ui.material.internal.machines;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.statushandlers.StatusManager;
import org.frisket.editing.elements.ImportArt;
import org.frisket.model.Job;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.UntitledInput;

/** Lays a job that was made, and that has no file yet, on a bench of its own. */
public final class JobOpener {

	private JobOpener() {
	}

	/** From there it is exported like any job. */
	public static void open(IWorkbenchPage page, Job job) {
		try {
			IEditorPart editor = page.openEditor(UntitledInput.next(page), Bench.EDITOR_ID);
			JobOnBench bench = Adapters.adapt(editor, JobOnBench.class);
			if (bench != null) {
				bench.edits().execute(ImportArt.intoNew(bench.job(), job, job.getTitle()));
			}
		} catch (PartInitException e) {
			StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
		}
	}
}
