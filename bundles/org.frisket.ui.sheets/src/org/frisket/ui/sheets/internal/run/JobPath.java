package org.frisket.ui.sheets.internal.run;

import java.nio.file.Path;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.frisket.ui.bench.JobOnBench;

/** Where the file of a job on a bench is. */
final class JobPath {

	private JobPath() {
	}

	/** Null if it has none. */
	static Path of(JobOnBench bench) {
		for (IWorkbenchWindow window : PlatformUI.getWorkbench().getWorkbenchWindows()) {
			for (IWorkbenchPage page : window.getPages()) {
				for (IEditorReference reference : page.getEditorReferences()) {
					IEditorPart editor = reference.getEditor(false);
					if (editor != null && Adapters.adapt(editor, JobOnBench.class) == bench) {
						return Adapters.adapt(editor.getEditorInput(), Path.class);
					}
				}
			}
		}
		return null;
	}
}
