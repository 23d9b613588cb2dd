package org.frisket.ui.material.internal.machines;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.studio.Studio;

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

	private final ISchedulingRule oneAtATime = new ISchedulingRule() {
		@Override
		public boolean contains(ISchedulingRule rule) {
			return rule == this;
		}

		@Override
		public boolean isConflicting(ISchedulingRule rule) {
			return rule == this;
		}
	};
	private final List<Listener> listeners = new CopyOnWriteArrayList<>();
	private DeskState state = DeskState.NOTHING;
	private String trouble = ""; //$NON-NLS-1$
	private int running;
	private boolean known;

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
	}

	public void removeListener(Listener listener) {
		listeners.remove(listener);
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

	private <T> void run(String name, SettingsDesk.Work<T, IOException> work, boolean changes, Consumer<T> done,
			Consumer<String> failed) {
		Display display = Display.getCurrent();
		running++;
		Job job = new Job(name) {
			@Override
			protected IStatus run(IProgressMonitor monitor) {
				try {
					T result = changes ? SettingsDesk.change(Studio.folder(), work) : null;
					DeskState now = SettingsDesk.look(Studio.folder());
					tell(display, () -> {
						publish(now, ""); //$NON-NLS-1$
						done.accept(result);
					});
				} catch (IOException | IllegalArgumentException e) {
					tell(display, () -> {
						publish(state, e.getMessage());
						failed.accept(e.getMessage());
					});
				} catch (RuntimeException e) {
					ILog.of(StudioDesk.class).error(name, e);
					tell(display, () -> publish(state, String.valueOf(e.getMessage())));
				}
				return Status.OK_STATUS;
			}
		};
		job.setSystem(!changes);
		job.setRule(oneAtATime);
		job.schedule();
	}

	private static void tell(Display display, Runnable news) {
		if (!display.isDisposed()) {
			display.asyncExec(news);
		}
	}

	private void publish(DeskState now, String why) {
		running--;
		known = true;
		state = now;
		trouble = why;
		listeners.forEach(Listener::deskChanged);
	}
}
