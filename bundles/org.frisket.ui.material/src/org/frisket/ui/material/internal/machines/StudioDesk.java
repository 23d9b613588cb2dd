package org.frisket.ui.material.internal.machines;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.studio.Studio;
import org.frisket.ui.studio.StoreJob;
import org.frisket.ui.studio.StoreWatch;

/**
 * The studio's settings as the screen knows them. They are read and kept on other threads, one thing after the other; only
 * for the UI thread itself.
 */
public final class StudioDesk {

	/** Told on the UI thread when there is something new, be it only that the store cannot be used. */
	@FunctionalInterface
	public interface Listener {

		void deskChanged();
	}

	private static final StudioDesk ONE = new StudioDesk();

	private final List<Listener> listeners = new CopyOnWriteArrayList<>();
	private DeskState state = DeskState.NOTHING;
	private String trouble = ""; //$NON-NLS-1$
	private volatile StoreWatch.Mark mark;
	private volatile int running;
	private boolean known;
	private final StoreWatch.Looker looker = new StoreWatch.Looker() {

		@Override
		public boolean isOutOfDate(StoreWatch.Mark now) {
			return running == 0 && !now.equals(mark);
		}

		@Override
		public void refresh() {
			Display display = PlatformUI.isWorkbenchRunning() ? PlatformUI.getWorkbench().getDisplay() : null;
			if (display != null && !display.isDisposed()) {
				display.asyncExec(StudioDesk.this::refresh);
			}
		}
	};

	private StudioDesk() {
	}

	/** That of the workbench. */
	public static StudioDesk get() {
		return ONE;
	}

	/** As it was read last. */
	public DeskState state() {
		return state;
	}

	/** Why the store cannot be used; empty if it can. */
	public String trouble() {
		return trouble;
	}

	/** Whether something can be kept. */
	public boolean canKeep() {
		return trouble.isEmpty() && !state.readOnly();
	}

	/** Whether the store was read yet. */
	public boolean isKnown() {
		return known;
	}

	/** Whether all that was asked is done. */
	public boolean isQuiet() {
		return running == 0;
	}

	public void addListener(Listener listener) {
		listeners.add(listener);
		StoreWatch.get().add(looker);
	}

	public void removeListener(Listener listener) {
		listeners.remove(listener);
		if (listeners.isEmpty()) {
			StoreWatch.get().remove(looker);
		}
	}

	/** Reads all again. */
	public void refresh() {
		run(Messages.StudioDesk_reading, settings -> null, false, nothing -> {
			// the state is news enough
		}, message -> {
			// the trouble is told
		});
	}

	/**
	 * Keeps something, wholly or not at all.
	 *
	 * @param name   for the list of what runs
	 * @param done   told on the UI thread what came of it, after the state is known anew
	 * @param failed told why not
	 */
	public <T> void change(String name, SettingsDesk.Work<T, IOException> work, Consumer<T> done,
			Consumer<String> failed) {
		run(name, work, true, done, failed);
	}

	/** What came of a visit, and what the store was after it. */
	private record Visit<T>(T result, StoreWatch.Mark mark, DeskState state) {
	}

	private <T> void run(String name, SettingsDesk.Work<T, IOException> work, boolean changes, Consumer<T> done,
			Consumer<String> failed) {
		running++;
		StoreJob<Visit<T>> job = new StoreJob<>(name, () -> {
			T result = changes ? SettingsDesk.change(Studio.folder(), work) : null;
			StoreWatch.Mark now = StoreWatch.Mark.now();
			DeskState seen = SettingsDesk.look(Studio.folder());
			if (changes) {
				StoreWatch.get().changed();
			}
			return new Visit<>(result, now, seen);
		}, visit -> {
			mark = visit.mark();
			publish(visit.state(), ""); //$NON-NLS-1$
			done.accept(visit.result());
		}, message -> {
			publish(state, message);
			failed.accept(message);
		});
		job.setSystem(!changes);
		job.schedule();
	}

	private void publish(DeskState now, String why) {
		running--;
		boolean news = !known || !now.equals(state) || !why.equals(trouble);
		known = true;
		state = now;
		trouble = why;
		if (news) {
			listeners.forEach(Listener::deskChanged);
		}
	}
}
