package org.frisket.ui.orders.internal.week;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.ui.IWorkbenchPartSite;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderException;
import org.frisket.orders.week.DueChange;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StepHistory;
import org.frisket.ui.studio.StepUndo;
import org.frisket.ui.studio.StoreJob;

/** Days on which jobs are due, changed at a week: undo and redo mean them while its view is active. */
final class DueMoves {

	private static final int STEPS = 50;

	private final StepHistory history = new StepHistory(Messages.DueMoves_name, STEPS);
	private final StepUndo undo;
	private final Consumer<String> told;
	/** Steps mean jobs of the book before. */
	private final Runnable forget = this::forget;

	/** @param told what came of each */
	DueMoves(IWorkbenchPartSite site, Consumer<String> told) {
		this.told = told;
		undo = new StepUndo(site, history.steps((back, step) -> run(step.getLabel(), () -> {
			IStatus status = history.take(back, step, new NullProgressMonitor());
			if (!status.isOK() && status.getCode() == DueMove.OVERTAKEN) {
				history.drop(step);
			}
			return status;
		})));
		OrderDesk.get().whenReplaced(forget);
	}

	void make(Entry entry, LocalDate to) {
		if (!entry.due().equals(Optional.of(to))) {
			DueMove move = new DueMove(new DueChange(entry.number(), entry.due(), Optional.of(to)));
			run(move.getLabel(), () -> {
				IStatus status = move.execute(new NullProgressMonitor(), null);
				if (status.isOK()) {
					history.add(move);
				}
				return status;
			});
		}
	}

	private void run(String label, StoreJob.Task<IStatus> task) {
		OrderDesk.get().change(label, () -> {
			IStatus status = task.run();
			if (!status.isOK()) {
				throw new OrderException(status.getMessage());
			}
			return label;
		}, this::tell, this::tell);
	}

	private void tell(String message) {
		undo.refresh();
		told.accept(message);
	}

	private void forget() {
		history.forget();
		undo.refresh();
	}

	void dispose() {
		OrderDesk.get().forgetWhenReplaced(forget);
		history.forget();
	}
}
