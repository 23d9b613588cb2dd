package org.frisket.ui.orders.internal.exchange;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.frisket.geometry.Monitor;
import org.frisket.orders.Entry;
import org.frisket.orders.intake.OrderIntake;
import org.frisket.orders.intake.OrderReading;
import org.frisket.orders.intake.RememberedMappings;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreJob;
import org.frisket.ui.studio.StoreWatch;

/** Takes in a table that was read, all of it or nothing. */
final class IntakeRun {

	/**
	 * What came of it.
	 *
	 * @param trouble why the mapping is not remembered; empty if it is, or was not to be
	 */
	record Taken(List<Entry> jobs, String trouble) {
	}

	private IntakeRun() {
	}

	/**
	 * @param remember by which name the mapping is remembered; empty if it is not
	 * @param part     told off the UI thread how much is done, from 0 to 1
	 * @return can be called off
	 */
	static Job start(OrderReading table, String remember, Consumer<Double> part, Consumer<Taken> done,
			Consumer<String> refused) {
		String person = OrderDesk.person();
		Job job = StoreJob.watched(Messages.IntakeRun_name, monitor -> {
			try {
				List<Entry> jobs = new OrderIntake(Studio.folder()).takeIn(table, person, watched(monitor, part));
				return new Taken(jobs, remembered(table, remember));
			} catch (CancellationException e) {
				throw new IOException(Messages.IntakeRun_cancelled, e);
			} finally {
				StoreWatch.get().changed();
			}
		}, done, refused);
		job.schedule();
		return job;
	}

	/** The orders are in the order book by now, whatever comes of this. */
	private static String remembered(OrderReading table, String name) {
		try {
			if (!name.isEmpty()) {
				new RememberedMappings(Studio.folder()).remember(name, table.mapping());
			}
			return ""; //$NON-NLS-1$
		} catch (IOException | IllegalArgumentException e) {
			return e.getMessage();
		}
	}

	private static Monitor watched(IProgressMonitor monitor, Consumer<Double> part) {
		return new Monitor() {

			@Override
			public boolean isCancelled() {
				return monitor.isCanceled();
			}

			@Override
			public void worked(double fraction) {
				part.accept(fraction);
			}
		};
	}
}
