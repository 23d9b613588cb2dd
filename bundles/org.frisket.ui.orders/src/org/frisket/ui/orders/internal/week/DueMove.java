package org.frisket.ui.orders.internal.week;

import java.io.IOException;

import org.eclipse.core.commands.operations.AbstractOperation;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.osgi.util.NLS;
import org.frisket.orders.OrderException;
import org.frisket.orders.week.DueChange;
import org.frisket.ui.orders.internal.OrderDesk;

/** Another day on which a job is due, in the history of the workbench. Off the UI thread only. */
final class DueMove extends AbstractOperation {

	/** The code of a status by which somebody else has given the job another day since, or it is gone. */
	static final int OVERTAKEN = 1;

	private final DueChange way;

	DueMove(DueChange way) {
		super(NLS.bind(Messages.DueMove_name, way.number()));
		this.way = way;
	}

	@Override
	public IStatus execute(IProgressMonitor monitor, IAdaptable info) {
		return go(way);
	}

	@Override
	public IStatus redo(IProgressMonitor monitor, IAdaptable info) {
		return go(way);
	}

	@Override
	public IStatus undo(IProgressMonitor monitor, IAdaptable info) {
		return go(way.back());
	}

	private static IStatus go(DueChange way) {
		try {
			way.go(OrderDesk.book(), OrderDesk.person());
			return Status.OK_STATUS;
		} catch (OrderException overtaken) {
			return new Status(IStatus.ERROR, DueMove.class, OVERTAKEN, overtaken.getMessage(), overtaken);
		} catch (IOException unusable) {
			return new Status(IStatus.ERROR, DueMove.class, unusable.getMessage(), unusable);
		}
	}
}
