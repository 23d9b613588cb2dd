package org.frisket.ui.orders.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.studio.Studio;
import org.frisket.ui.studio.StoreJob;
import org.frisket.ui.studio.StoreWatch;

/**
 * The order book as the screen knows it: what was in it when it was looked at last, and whether it could be looked at.
 * While somebody listens, changes of other desks are noticed by themselves. Only for the UI thread, but for what is said
 * otherwise.
 */
public final class OrderDesk {

	private static final OrderDesk ONLY = new OrderDesk();

	/** What was seen; made off the UI thread. */
	private record Sight(StoreWatch.Mark mark, List<Entry> jobs) {
	}

	private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
	private final StoreWatch.Looker looker = new StoreWatch.Looker() {

		@Override
		public boolean isOutOfDate(StoreWatch.Mark now) {
			Sight last = sight;
			// while there is trouble, it may be over
			return !reading && (last == null || trouble != null || !last.mark().equals(now));
		}

		@Override
		public void refresh() {
			OrderDesk.this.refresh();
		}
	};
	private volatile Sight sight;
	private volatile String trouble;
	private volatile boolean reading;

	private OrderDesk() {
	}

	public static OrderDesk get() {
		return ONLY;
	}

	/** The studio's order book. Every call of it may wait for other desks, so it is none for the UI thread. */
	public static OrderBook book() {
		return new OrderBook(Studio.folder());
	}

	/** All jobs, the latest number first; nothing before they were looked at for the first time. */
	public List<Entry> jobs() {
		return sight == null ? List.of() : sight.jobs();
	}

	public Optional<Entry> find(long number) {
		return jobs().stream().filter(entry -> entry.number() == number).findFirst();
	}

	/** Whether it has been looked at. */
	public boolean isKnown() {
		return sight != null;
	}

	/** Why it cannot be looked at just now; what was seen before stays. */
	public Optional<String> trouble() {
		return Optional.ofNullable(trouble);
	}

	/** @param listener told on the UI thread when something else is seen, or there is trouble, or none any more */
	public void addListener(Runnable listener) {
		listeners.add(listener);
		StoreWatch.get().add(looker);
		refresh();
	}

	public void removeListener(Runnable listener) {
		listeners.remove(listener);
		if (listeners.isEmpty()) {
			StoreWatch.get().remove(looker);
		}
	}

	/** Looks again, in a while; safe on any thread. */
	public void refresh() {
		if (!reading) {
			reading = true;
			StoreJob<Sight> job = new StoreJob<>(Messages.OrderDesk_reading, OrderDesk::look, this::seen, this::failed);
			job.setSystem(true);
			job.schedule();
		}
	}

	/**
	 * Does something at the order book, in a while, and has everybody look again who shows something of it.
	 *
	 * @param label   for people who look at what is going on
	 * @param done    told on the UI thread what came of it
	 * @param refused told on the UI thread why nothing did
	 */
	public <T> void change(String label, StoreJob.Task<T> task, Consumer<T> done, Consumer<String> refused) {
		new StoreJob<>(label, () -> {
			try {
				return task.run();
			} finally {
				StoreWatch.get().changed();
			}
		}, done, refused).schedule();
	}

	private static Sight look() throws Exception {
		StoreWatch.Mark mark = StoreWatch.Mark.now();
		return new Sight(mark, book().list(Long.MAX_VALUE));
	}

	private void seen(Sight now) {
		reading = false;
		boolean same = sight != null && trouble == null && now.mark().folder().equals(sight.mark().folder())
				&& now.jobs().equals(sight.jobs());
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
			sight = new Sight(new StoreWatch.Mark(folder, ""), List.of()); //$NON-NLS-1$
		}
		if (!message.equals(trouble)) {
			trouble = message;
			listeners.forEach(Runnable::run);
		}
	}
}
