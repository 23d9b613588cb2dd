package org.frisket.ui.orders.internal.customers;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.core.commands.operations.IUndoableOperation;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.frisket.orders.OrderException;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.CustomerChangedException;
import org.frisket.orders.customers.Customers;
import org.frisket.orders.customers.LikeCustomers;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StepHistory;
import org.frisket.ui.studio.StepUndo;
import org.frisket.ui.studio.StoreJob;
import org.frisket.ui.studio.StoreWatch;

/**
 * Whom the studio works for, as the screen knows it. While somebody listens, changes of other desks are noticed by
 * themselves. Changes go through here, each one step of undo. Only for the UI thread, but for what is said otherwise.
 */
public final class CustomerDesk {

	private static final CustomerDesk ONLY = new CustomerDesk();
	private static final int STEPS = 200;

	/** What was seen; made off the UI thread. */
	private record Sight(StoreWatch.Mark mark, List<Customer> customers, List<LikeCustomers> alike) {
	}

	/** What came of a change. */
	public interface Outcome {

		/** @param id of whom it was about */
		void done(String id);

		/** @param now as somebody else has changed it meanwhile */
		void overtaken(Customer now);

		/** @param why nothing was changed */
		void refused(String why);
	}

	private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
	private final StepHistory history = new StepHistory(Messages.CustomersView_name, STEPS);
	private final StoreWatch.Looker looker = new StoreWatch.Looker() {

		@Override
		public boolean isOutOfDate(StoreWatch.Mark now) {
			Sight last = sight;
			// while there is trouble, it may be over
			return !reading && (last == null || trouble != null || !last.mark().equals(now));
		}

		@Override
		public void refresh() {
			CustomerDesk.this.refresh();
		}
	};
	private volatile Sight sight;
	private volatile String trouble;
	private volatile boolean reading;

	private CustomerDesk() {
		OrderDesk.get().whenReplaced(() -> {
			forgetSteps();
			refresh();
		});
	}

	public static CustomerDesk get() {
		return ONLY;
	}

	/** By name; nobody before they were looked at for the first time. */
	List<Customer> customers() {
		return sight == null ? List.of() : sight.customers();
	}

	Optional<Customer> find(String id) {
		return customers().stream().filter(customer -> customer.id().equals(id)).findFirst();
	}

	/** Those that may be one, the likeliest first. */
	List<LikeCustomers> alike() {
		return sight == null ? List.of() : sight.alike();
	}

	/** Why they cannot be looked at just now; what was seen before stays. */
	Optional<String> trouble() {
		return Optional.ofNullable(trouble);
	}

	void addListener(Runnable listener) {
		listeners.add(listener);
		StoreWatch.get().add(looker);
		refresh();
	}

	void removeListener(Runnable listener) {
		listeners.remove(listener);
		if (listeners.isEmpty()) {
			StoreWatch.get().remove(looker);
		}
	}

	/** Looks again, in a while; safe on any thread. */
	void refresh() {
		if (!reading) {
			reading = true;
			StoreJob<Sight> job = new StoreJob<>(Messages.CustomerDesk_reading, CustomerDesk::look, this::seen,
					this::failed);
			job.setSystem(true);
			job.schedule();
		}
	}

	/** What was done is done, whether or not it can be seen just now. */
	private void lookAfterwards() {
		try {
			sight = look();
		} catch (IOException | OrderException e) {
			trouble = e.getMessage();
		}
	}

	private static Sight look() throws IOException, OrderException {
		StoreWatch.Mark mark = StoreWatch.Mark.now();
		List<Customer> all = new Customers(Studio.folder()).list();
		return new Sight(mark, all, LikeCustomers.among(all));
	}

	private void seen(Sight now) {
		reading = false;
		boolean same = sight != null && trouble == null && now.mark().folder().equals(sight.mark().folder())
				&& now.customers().equals(sight.customers());
		if (sight != null && !sight.mark().folder().equals(now.mark().folder())) {
			forgetSteps();
		}
		sight = now;
		trouble = null;
		if (!same) {
			listeners.forEach(Runnable::run);
		}
	}

	private void failed(String message) {
		reading = false;
		Path folder = Studio.folder().path();
		if (sight == null || !sight.mark().folder().equals(folder)) {
			sight = new Sight(new StoreWatch.Mark(folder, ""), List.of(), List.of()); //$NON-NLS-1$
		}
		trouble = message;
		listeners.forEach(Runnable::run);
	}

	/** Nothing can be taken back any more: steps remember who somebody was. */
	public void forgetSteps() {
		history.forget();
	}

	/** Changes something, in a while. @param label of the step, for the menu */
	public void change(String label, CustomerStep step, Outcome outcome) {
		StoreJob.Task<Optional<Customer>> task = () -> {
			try {
				step.make(new Customers(Studio.folder()));
			} catch (CustomerChangedException overtaken) {
				return Optional.of(overtaken.now());
			}
			history.add(new CustomerOperation(label, step));
			lookAfterwards();
			StoreWatch.get().changed();
			return Optional.empty();
		};
		new StoreJob<>(label, task, now -> {
			listeners.forEach(Runnable::run);
			now.ifPresentOrElse(outcome::overtaken, () -> outcome.done(step.id()));
		}, outcome::refused).schedule();
	}

	/** Undo and redo of the customers for a view. @param after told why nothing was done; empty if it was */
	StepUndo.Steps steps(Consumer<Optional<String>> after) {
		return history.steps((back, step) -> walk(back, step, after));
	}

	private void walk(boolean back, IUndoableOperation step, Consumer<Optional<String>> after) {
		StoreJob.Task<IStatus> task = () -> {
			IStatus status = history.take(back, step, new NullProgressMonitor());
			if (!status.isOK() && status.getCode() == CustomerOperation.OVERTAKEN) {
				history.drop(step);
			}
			lookAfterwards();
			StoreWatch.get().changed();
			return status;
		};
		new StoreJob<>(step.getLabel(), task, status -> {
			listeners.forEach(Runnable::run);
			after.accept(status.isOK() ? Optional.empty() : Optional.of(status.getMessage()));
		}, message -> after.accept(Optional.of(message))).schedule();
	}
}
