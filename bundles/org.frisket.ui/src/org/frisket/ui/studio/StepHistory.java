package org.frisket.ui.studio;

import java.util.Optional;

import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.operations.IOperationHistory;
import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.commands.operations.IUndoableOperation;
import org.eclipse.core.commands.operations.ObjectUndoContext;
import org.eclipse.core.commands.operations.OperationHistoryFactory;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;

/** What was changed at one place of the screen, in the history of the workbench, so that it can be taken back. */
public final class StepHistory {

	/** Takes a step, in a while. */
	public interface Walk {

		/** @param back whether it is taken back, or else made again */
		void go(boolean back, IUndoableOperation step);
	}

	private final IOperationHistory history = OperationHistoryFactory.getOperationHistory();
	private final IUndoContext context;

	/** @param most how many steps are remembered */
	public StepHistory(String name, int most) {
		context = new ObjectUndoContext(this, name);
		history.setLimit(context, most);
	}

	/** Remembers a step that was made. Safe on any thread. */
	public void add(IUndoableOperation step) {
		step.addContext(context);
		history.add(step);
	}

	/** Takes a step that was added before; none for the UI thread if the step is none. @return what came of it */
	public IStatus take(boolean back, IUndoableOperation step, IProgressMonitor monitor) throws ExecutionException {
		return back ? history.undoOperation(step, monitor, null) : history.redoOperation(step, monitor, null);
	}

	/** A step can never be taken any more, and would bar those before it. Safe on any thread. */
	public void drop(IUndoableOperation step) {
		history.replaceOperation(step, new IUndoableOperation[0]);
	}

	/** Nothing can be taken back any more. */
	public void forget() {
		history.dispose(context, true, true, true);
	}

	private Optional<IUndoableOperation> next(boolean back) {
		return Optional.ofNullable(back ? history.getUndoOperation(context) : history.getRedoOperation(context));
	}

	/** Undo and redo of these steps for a view. */
	public StepUndo.Steps steps(Walk walk) {
		return new StepUndo.Steps() {

			@Override
			public Optional<String> label(boolean back) {
				return next(back).map(IUndoableOperation::getLabel);
			}

			@Override
			public void step(boolean back) {
				next(back).ifPresent(step -> walk.go(back, step));
			}
		};
	}
}
