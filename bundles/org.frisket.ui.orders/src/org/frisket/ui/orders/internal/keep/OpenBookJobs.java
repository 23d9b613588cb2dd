package org.frisket.ui.orders.internal.keep;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.PlaceInput;

/** Which jobs of the studio's order book lie on benches. Only for the UI thread. */
public final class OpenBookJobs {

	private OpenBookJobs() {
	}

	/** Their names. */
	public static List<String> open() {
		return names(editor -> true);
	}

	/** The names of those that have changes which are not saved. */
	public static List<String> dirty() {
		return names(IEditorReference::isDirty);
	}

	private static List<String> names(Predicate<IEditorReference> meant) {
		List<String> names = new ArrayList<>();
		for (IWorkbenchWindow window : PlatformUI.getWorkbench().getWorkbenchWindows()) {
			for (IWorkbenchPage page : window.getPages()) {
				for (IEditorReference editor : page.getEditorReferences()) {
					if (isOfTheBook(editor) && meant.test(editor)) {
						names.add(editor.getPartName());
					}
				}
			}
		}
		return names;
	}

	private static boolean isOfTheBook(IEditorReference editor) {
		try {
			return editor.getEditorInput() instanceof PlaceInput input && input.place() instanceof BookPlace place
					&& place.studio().equals(Studio.folder().path());
		} catch (PartInitException e) {
			// a tab that cannot be restored has no job on it
			ILog.of(OpenBookJobs.class).warn(e.getMessage(), e);
			return false;
		}
	}
}
