package org.frisket.ui.bench.internal.handlers;

import java.util.HashSet;
import java.util.Set;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.UntitledInput;
import org.frisket.ui.bench.internal.files.Recovery;

/** Lays a new, empty job on a bench of its own. */
public final class NewJobHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
		Set<Integer> taken = taken(page);
		int number = 1;
		while (taken.contains(number)) {
			number++;
		}
		try {
			page.openEditor(new UntitledInput(number), Bench.EDITOR_ID);
		} catch (PartInitException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
		return null;
	}

	/** Those that are open, and those that wait to be brought back. */
	private static Set<Integer> taken(IWorkbenchPage page) throws ExecutionException {
		Set<Integer> taken = new HashSet<>();
		Recovery.all().forEach(unsaved -> taken.add(unsaved.number()));
		for (IEditorReference reference : page.getEditorReferences()) {
			try {
				if (reference.getEditorInput() instanceof UntitledInput untitled) {
					taken.add(untitled.number());
				}
			} catch (PartInitException e) {
				throw new ExecutionException(e.getMessage(), e);
			}
		}
		return taken;
	}
}
