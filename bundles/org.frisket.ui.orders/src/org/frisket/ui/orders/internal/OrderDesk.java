package org.frisket.ui.orders.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.desk.BookReader;
import org.frisket.orders.desk.KnownJobs;
import org.frisket.studio.Studio;
import org.frisket.ui.studio.StoreJob;
import org.frisket.ui.studio.StoreWatch;

/**
 * The order book as the screen knows it: what was in it when it was looked at last, and whether it could be looked at.
 * While somebody listens, changes of other desks are noticed by themselves. Only for the UI thread, but for what is
 * said otherwise.
 */
public final class OrderDesk {

	private static final OrderDesk ONLY = new OrderDesk();

	/** So many jobs are seen before all have been read. */
	private static final int FIRST = 200;

	/**
	 * What was seen; made off the UI thread.
	 *
	 * @param whole whether it is all that is there, and not the newest only
	 */
	private record Sight(StoreWatch.Mark mark, KnownJobs known, boolean whole) {

		boolean isOf(Path folder) {
			return mark.folder().equals(folder);
		}
	}

	private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
	private final StoreWatch.Looker looker = new StoreWatch.Looker() {

		@Override
		public boolean isOutOfDate(StoreWatch.Mark now) {
			Sight last = sight;
			// while there is trouble, it may be over
			return !reading && (last == null || !last.whole() || trouble != null || !last.mark().equals(now));
		}

		@Override
		public void refresh() {
			OrderDesk.this.refresh();
		}
	};
	private volatile Sight sight;
	private volatile String trouble;
	private volatile boolean reading;
	/** Whether somebody wants to have it looked at again while that is being done. */
	private volatile boolean again;
	/** Whether what was read is of another book, and tells nothing of this one. */
	private volatile boolean replaced;
	private final List<Runnable> whenReplaced = new CopyOnWriteArrayList<>();

	private OrderDesk() {
	}

	public static OrderDesk get() {
		return ONLY;
	}

	/** The studio's order book. Every call of it may wait for other desks, so it is none for the UI thread. */
	public static OrderBook book() {
		return new OrderBook(Studio.folder());
	}

	/** Whoever sits at this desk, as the history of a job says. */
	public static String person() {
		return Person.name();
	}

	/**
	 * All jobs, the latest number first; nothing before they were looked at for the first time, and the newest only
	 * before all were read. The same list as long as nothing is changed.
	 */
	public List<Entry> jobs() {
		return sight == null ? List.of() : sight.known().jobs();
	}

	/** The numbers of jobs that no list has because they cannot be read, the latest first. */
	public List<Long> unreadable() {
		return sight == null ? List.of() : sight.known().unreadable();
	}

	/** Quickly, however many jobs there are. */
	public Optional<Entry> find(long number) {
		return sight == null ? Optional.empty() : sight.known().find(number);
	}

	/** Whether all of it has been read, and not the newest jobs only. */
	public boolean isWhole() {
		return sight != null && sight.whole();
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
		if (reading) {
			again = true;
			return;
		}
		reading = true;
		again = false;
		StoreJob<Sight> job = new StoreJob<>(Messages.OrderDesk_reading, this::look, this::seen, this::failed);
		job.setSystem(true);
		job.schedule();
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

	/** @param told on the UI thread when all of the book is another one, so that steps of undo mean nothing any more */
	public void whenReplaced(Runnable told) {
		whenReplaced.add(told);
	}

	public void forgetWhenReplaced(Runnable told) {
		whenReplaced.remove(told);
	}

	/** All of the book is another one from now on, as after a restore: everybody looks anew. */
	public void bookIsReplaced() {
		replaced = true;
		refresh();
		StoreWatch.get().changed();
		whenReplaced.forEach(Runnable::run);
	}

	/** The newest jobs at the first time, then all, and from then on only what was changed. */
	private Sight look() throws Exception {
		StoreWatch.Mark mark = StoreWatch.Mark.now();
		BookReader reader = new BookReader(Studio.folder());
		Sight last = sight;
		boolean anew = replaced;
		replaced = false;
		if (last == null || anew || !last.isOf(mark.folder())) {
			KnownJobs newest = reader.newest(FIRST);
			return new Sight(mark, newest, newest.jobs().size() < FIRST);
		}
		return new Sight(mark, last.whole() ? reader.again(last.known()) : reader.all(), true);
	}

	private void seen(Sight now) {
		Sight last = sight;
		boolean same = last != null && trouble == null && last.isOf(now.mark().folder()) && last.whole() == now.whole()
				&& (last.known() == now.known() || last.known().unreadable().equals(now.known().unreadable())
						&& last.known().jobs().equals(now.known().jobs()));
		sight = same ? new Sight(now.mark(), last.known(), now.whole()) : now;
		trouble = null;
		reading = false;
		if (!same) {
			listeners.forEach(Runnable::run);
		}
		if (again || !now.whole()) {
			refresh();
		}
	}

	private void failed(String message) {
		reading = false;
		Path folder = Studio.folder().path();
		if (sight == null || !sight.isOf(folder)) {
			sight = new Sight(new StoreWatch.Mark(folder, ""), KnownJobs.NONE, true); //$NON-NLS-1$
		}
		if (!message.equals(trouble)) {
			trouble = message;
			listeners.forEach(Runnable::run);
		}
	}
}
