package org.frisket.ui.orders.internal.customers;

import java.io.IOException;

import org.eclipse.core.commands.operations.AbstractOperation;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.frisket.orders.OrderException;
import org.frisket.orders.customers.Customers;
import org.frisket.studio.Studio;

/** A step in the history of the workbench; taken back and made again off the UI thread only. */
final class CustomerOperation extends AbstractOperation {

	/** The code of a status by which somebody else has changed since what the operation is about. */
	static final int OVERTAKEN = 1;

	private final CustomerStep step;

	CustomerOperation(String label, CustomerStep step) {
		super(label);
		this.step = step;
	}

	@Override
	public IStatus execute(IProgressMonitor monitor, IAdaptable info) {
		return run(false);
	}

	@Override
	public IStatus redo(IProgressMonitor monitor, IAdaptable info) {
		return run(false);
	}

	@Override
	public IStatus undo(IProgressMonitor monitor, IAdaptable info) {
		return run(true);
	}

	private IStatus run(boolean back) {
		Customers all = new Customers(Studio.folder());
		try {
			if (back) {
				step.takeBack(all);
			} else {
				step.make(all);
			}
			return Status.OK_STATUS;
		} catch (OrderException overtaken) {
			return new Status(IStatus.ERROR, CustomerOperation.class, OVERTAKEN, overtaken.getMessage(), overtaken);
		} catch (IOException unusable) {
			return new Status(IStatus.ERROR, CustomerOperation.class, unusable.getMessage(), unusable);
		}
	}
}
