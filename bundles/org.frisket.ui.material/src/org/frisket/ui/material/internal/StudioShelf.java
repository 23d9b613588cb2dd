package org.frisket.ui.material.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.core.commands.operations.IUndoableOperation;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.frisket.material.ShelfException;
import org.frisket.material.ShelvedStock;
import org.frisket.material.StockShelf;
import org.frisket.material.shelf.StockChange;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;
import org.frisket.ui.studio.StepHistory;
import org.frisket.ui.studio.StepUndo;
import org.frisket.ui.studio.StoreJob;
import org.frisket.ui.studio.StoreWatch;

/**
 * The studio's shelf as the screen knows it: what lay on it when it was looked at last, and whether it could be looked
 * at. While somebody listens, changes of other desks are noticed by themselves. All changes go through here, each one
 * step of undo. Only for the UI thread, but for what is said otherwise.
 */
public final class StudioShelf {

	private static final StudioShelf ONLY = new StudioShelf();
	private static final int STEPS = 200;

	/** What was seen; made off the UI thread. */
	private record Sight(StoreWatch.Mark mark, List<ShelvedStock> stocks) {

		Path folder() {
			return mark.folder();
		}
	}

	/** Makes a change of what lies on the shelf now. Called off the UI thread. */
	public interface Plan {
		StockChange at(StockShelf shelf) throws IOException, ShelfException;
	}

	private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
	private final StepHistory history = new StepHistory(Messages.StudioShelf_name, STEPS);
	private final StoreWatch.Looker looker = new StoreWatch.Looker() {

		@Override
		public boolean isOutOfDate(StoreWatch.Mark now) {
			Sight last = sight;
			// while there is trouble, it may be over
			return !reading && (last == null || trouble != null || !last.mark().equals(now));
		}

		@Override
		public void refresh() {
			StudioShelf.this.refresh();
		}
	};
	private volatile Sight sight;
	private volatile String trouble;
	private volatile boolean reading;

	private StudioShelf() {
	}

	public static StudioShelf get() {
		return ONLY;
	}

	/** All that lies on it, by name; nothing before it was looked at for the first time. */
	public List<ShelvedStock> stocks() {
		return sight == null ? List.of() : sight.stocks();
	}

	public Optional<ShelvedStock> find(String id) {
		return stocks().stream().filter(shelved -> shelved.stock().id().equals(id)).findFirst();
	}

	/** Whether it has been looked at. */
	public boolean isKnown() {
		return sight != null;
	}

	/** Why it cannot be looked at, or changed, just now; what was seen before stays. */
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
			StoreJob<Sight> job = new StoreJob<>(Messages.StudioShelf_reading, StudioShelf::look, this::seen, this::failed);
			job.setSystem(true);
			job.schedule();
		}
	}

	private static Sight look() throws IOException {
		StudioFolder folder = Studio.folder();
		StoreWatch.Mark mark = StoreWatch.Mark.now();
		try (Store store = Store.openForReading(folder, StockShelf.AREA)) {
			return new Sight(mark, new StockShelf(store).list());
		}
	}

	private void seen(Sight now) {
		reading = false;
		boolean same = sight != null && trouble == null && now.folder().equals(sight.folder())
				&& now.stocks().equals(sight.stocks());
		if (sight != null && !sight.folder().equals(now.folder())) {
			history.forget();
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
		if (sight == null || !sight.folder().equals(folder)) {
			sight = new Sight(new StoreWatch.Mark(folder, ""), List.of());
		}
		if (!message.equals(trouble)) {
			trouble = message;
			listeners.forEach(Runnable::run);
		}
	}

	/**
	 * Changes the shelf, in a while.
	 *
	 * @param label of the step, for the menu
	 * @param after told on the UI thread why nothing was changed; empty if it was
	 */
	public void change(String label, Plan plan, Consumer<Optional<String>> after) {
		StoreJob.Task<Sight> task = () -> {
			StockChange[] made = new StockChange[1];
			Sight now = at(shelf -> {
				made[0] = plan.at(shelf);
				made[0].run(shelf);
			});
			history.add(new ShelfOperation(label, made[0], this::run));
			return now;
		};
		new StoreJob<>(label, task, now -> {
			seen(now);
			after.accept(Optional.empty());
		}, message -> after.accept(Optional.of(message))).schedule();
	}

	private interface Visit {
		void at(StockShelf shelf) throws IOException, ShelfException;
	}

	private static Sight at(Visit visit) throws IOException, ShelfException {
		StudioFolder folder = Studio.folder();
		try (Store store = Store.open(folder, StockShelf.AREA)) {
			StockShelf shelf = new StockShelf(store);
			visit.at(shelf);
			// nobody else can have changed anything meanwhile
			return new Sight(StoreWatch.Mark.now(), shelf.list());
		} finally {
			StoreWatch.get().changed();
		}
	}

	private void run(StockChange change) throws IOException, ShelfException {
		sight = at(change::run);
	}

	/** Undo and redo of the shelf for a view. @param after as with {@link #change} */
	public StepUndo.Steps steps(Consumer<Optional<String>> after) {
		return history.steps((back, step) -> walk(back, step, after));
	}

	private void walk(boolean back, IUndoableOperation step, Consumer<Optional<String>> after) {
		StoreJob.Task<IStatus> task = () -> {
			IStatus status = history.take(back, step, new NullProgressMonitor());
			if (status.getCode() == ShelfOperation.OVERTAKEN && !status.isOK()) {
				history.drop(step);
			}
			return status;
		};
		new StoreJob<>(step.getLabel(), task, status -> {
			trouble = status.isOK() ? null : trouble;
			listeners.forEach(Runnable::run);
			after.accept(status.isOK() ? Optional.empty() : Optional.of(status.getMessage()));
		}, message -> after.accept(Optional.of(message))).schedule();
	}
}
