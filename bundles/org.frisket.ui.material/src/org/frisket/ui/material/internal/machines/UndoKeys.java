package org.frisket.ui.material.internal.machines;

import org.eclipse.core.commands.operations.IOperationHistory;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.commands.operations.IUndoableOperation;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.commands.ActionHandler;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.operations.RedoActionHandler;
import org.eclipse.ui.operations.UndoActionHandler;

/** Has the keys of undo and redo mean what was done on a page, in the history of the platform. */
public final class UndoKeys {

	private final IUndoContext context;
	private final UndoActionHandler undo;
	private final RedoActionHandler redo;

	public UndoKeys(IWorkbenchPartSite site, IUndoContext context) {
		this.context = context;
		undo = new UndoActionHandler(site, context);
		undo.setActionDefinitionId(IWorkbenchCommandConstants.EDIT_UNDO);
		redo = new RedoActionHandler(site, context);
		redo.setActionDefinitionId(IWorkbenchCommandConstants.EDIT_REDO);
		IHandlerService handlers = site.getService(IHandlerService.class);
		handlers.activateHandler(IWorkbenchCommandConstants.EDIT_UNDO, new ActionHandler(undo));
		handlers.activateHandler(IWorkbenchCommandConstants.EDIT_REDO, new ActionHandler(redo));
	}

	private static IOperationHistory history() {
		return PlatformUI.getWorkbench().getOperationSupport().getOperationHistory();
	}

	/** Does something that can be undone. */
	public void execute(IUndoableOperation operation) {
		try {
			history().execute(operation, null, null);
		} catch (ExecutionException e) {
			ILog.of(UndoKeys.class).error(operation.getLabel(), e);
		}
	}

	/** Forgets all that was done here. */
	public void dispose() {
		history().dispose(context, true, true, true);
		undo.dispose();
		redo.dispose();
	}
}
