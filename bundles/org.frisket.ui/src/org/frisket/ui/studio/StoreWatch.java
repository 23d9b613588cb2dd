package org.frisket.ui.studio;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;

/**
 * Sees every now and then, off the UI thread, whether anybody has changed the studio's store, and has those look again
 * who show something of it: one watch for all of them. What is changed on this screen is seen at once.
 */
public final class StoreWatch extends Job {

	/** What the store was when it was looked at: of which studio, and after which change. */
	public record Mark(Path folder, String revision) {

		/** By a look at a file; take it before the store is looked at, so that no later change is missed. */
		public static Mark now() {
			StudioFolder folder = Studio.folder();
			return new Mark(folder.path(), Store.revision(folder));
		}
	}

	/** Somebody who shows something of the store. */
	public interface Looker {

		/** Whether what is shown may be something else by now. Called on any thread. */
		boolean isOutOfDate(Mark now);

		/** Looks again, in a while. Called on any thread. */
		void refresh();
	}

	private static final StoreWatch ONLY = new StoreWatch();
	private static final long PAUSE_MS = 1500;

	private final List<Looker> lookers = new CopyOnWriteArrayList<>();

	private StoreWatch() {
		super(Messages.StoreWatch_name);
		setSystem(true);
		setPriority(DECORATE);
	}

	public static StoreWatch get() {
		return ONLY;
	}

	/** From now on changes are told; twice is like once. */
	public void add(Looker looker) {
		if (!lookers.contains(looker)) {
			lookers.add(looker);
			schedule(PAUSE_MS);
		}
	}

	public void remove(Looker looker) {
		lookers.remove(looker);
		if (lookers.isEmpty()) {
			cancel();
		}
	}

	/** Something was changed here: the others are told without waiting. Safe on any thread. */
	public void changed() {
		if (!lookers.isEmpty()) {
			cancel();
			schedule();
		}
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		Mark now = Mark.now();
		lookers.stream().filter(looker -> looker.isOutOfDate(now)).forEach(Looker::refresh);
		if (!lookers.isEmpty()) {
			schedule(PAUSE_MS);
		}
		return Status.OK_STATUS;
	}
}
