package org.frisket.ui.orders.internal.week;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.operations.IOperationHistory;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.commands.operations.IUndoableOperation;
import org.eclipse.core.commands.operations.ObjectUndoContext;
import org.eclipse.core.commands.operations.OperationHistoryFactory;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.handlers.IHandlerService;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderException;
import org.frisket.orders.week.DueChange;
import org.frisket.ui.orders.internal.OrderDesk;

/** Days on which jobs are due, changed at a week: undo and redo mean them while its view is active. */
final class DueMoves {

	private static final int STEPS = 50;

	private final IOperationHistory history = OperationHistoryFactory.getOperationHistory();
	private final IUndoContext context = new ObjectUndoContext(this);
	private final Consumer<String> told;

	/** @param told what came of each */
	DueMoves(IWorkbenchPartSite site, Consumer<String> told) {
		this.told = told;
		history.setLimit(context, STEPS);
		IHandlerService handlers = site.getService(IHandlerService.class);
		handlers.activateHandler(IWorkbenchCommandConstants.EDIT_UNDO, new Step(true));
		handlers.activateHandler(IWorkbenchCommandConstants.EDIT_REDO, new Step(false));
	}

	void make(Entry entry, LocalDate to) {
		if (!entry.due().equals(Optional.of(to))) {
			DueMove move = new DueMove(new DueChange(entry.number(), entry.due(), Optional.of(to)));
			move.addContext(context);
			run(move.getLabel(), () -> history.execute(move, new NullProgressMonitor(), null));
		}
	}

	/** A step in the history. */
	private interface Walk {
		IStatus go() throws ExecutionException;
	}

	private void run(String label, Walk walk) {
		OrderDesk.get().change(label, () -> {
			IStatus status = walk.go();
			if (!status.isOK()) {
				throw new OrderException(status.getMessage());
			}
			return label;
		}, told, told);
	}

	void dispose() {
		history.dispose(context, true, true, true);
	}

	private final class Step extends AbstractHandler {

		private final boolean back;

		Step(boolean back) {
			this.back = back;
		}

		@Override
		public Object execute(ExecutionEvent event) {
			IUndoableOperation operation = back ? history.getUndoOperation(context) : history.getRedoOperation(context);
			if (operation != null) {
				run(operation.getLabel(), () -> back ? history.undoOperation(operation, new NullProgressMonitor(), null)
						: history.redoOperation(operation, new NullProgressMonitor(), null));
			}
			return null;
		}
	}
}
