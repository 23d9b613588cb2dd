package org.frisket.ui.material.internal;

import java.io.IOException;

import org.eclipse.core.commands.operations.AbstractOperation;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.frisket.material.ShelfException;
import org.frisket.material.shelf.StockChange;

/** A change of the shelf in the history of the workbench; taken back and made again off the UI thread only. */
final class ShelfOperation extends AbstractOperation {

	/** Runs a change at the store. */
	interface Runner {
		void run(StockChange change) throws IOException, ShelfException;
	}

	private final StockChange change;
	private final Runner runner;

	ShelfOperation(String label, StockChange change, Runner runner) {
		super(label);
		this.change = change;
		this.runner = runner;
	}

	@Override
	public IStatus execute(IProgressMonitor monitor, IAdaptable info) {
		return run();
	}

	@Override
	public IStatus redo(IProgressMonitor monitor, IAdaptable info) {
		return run();
	}

	@Override
	public IStatus undo(IProgressMonitor monitor, IAdaptable info) {
		return run();
	}

	private IStatus run() {
		try {
			runner.run(change);
			return Status.OK_STATUS;
		} catch (ShelfException overtaken) {
			return new Status(IStatus.ERROR, ShelfOperation.class, OVERTAKEN, overtaken.getMessage(), overtaken);
		} catch (IOException unusable) {
			return new Status(IStatus.ERROR, ShelfOperation.class, unusable.getMessage(), unusable);
		}
	}

	/** The code of a status by which somebody else has changed since what the operation is about. */
	static final int OVERTAKEN = 1;
}
