package org.frisket.ui.studio;

import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/**
 * A piece of work at the studio's store, off the UI thread. Such pieces come one after the other. What cannot be done is
 * told by a sentence for people; nothing is ever thrown at whoever asked.
 *
 * @param <T> what comes of it
 */
public final class StoreJob<T> extends Job {

	/** What is done. */
	public interface Task<T> {

		/** @throws Exception if it cannot be done; the message of a checked one is for people */
		T run() throws Exception;
	}

	/** What is done, watched while it is. */
	public interface WatchedTask<T> {

		/** @throws Exception if it cannot be done; the message of a checked one is for people */
		T run(IProgressMonitor monitor) throws Exception;
	}

	private static final ISchedulingRule ONE_AT_A_TIME = new ISchedulingRule() {

		@Override
		public boolean isConflicting(ISchedulingRule rule) {
			return rule == this;
		}

		@Override
		public boolean contains(ISchedulingRule rule) {
			return rule == this;
		}
	};

	private final WatchedTask<T> task;
	private final Consumer<T> done;
	private final Consumer<String> refused;

	/**
	 * @param name    of the work, for people who look at what is going on
	 * @param done    told on the UI thread what came of it
	 * @param refused told on the UI thread why nothing did
	 */
	public StoreJob(String name, Task<T> task, Consumer<T> done, Consumer<String> refused) {
		this(name, monitor -> task.run(), done, refused);
	}

	private StoreJob(String name, WatchedTask<T> task, Consumer<T> done, Consumer<String> refused) {
		super(name);
		this.task = task;
		this.done = done;
		this.refused = refused;
		setRule(ONE_AT_A_TIME);
		setPriority(SHORT);
	}

	/** The same of a task that asks whether it is called off, and tells how far it is. */
	public static <T> StoreJob<T> watched(String name, WatchedTask<T> task, Consumer<T> done, Consumer<String> refused) {
		return new StoreJob<>(name, task, done, refused);
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		try {
			T result = task.run(monitor);
			onUi(() -> done.accept(result));
		} catch (Exception e) {
			if (e instanceof RuntimeException && !(e instanceof IllegalArgumentException)) {
				ILog.of(StoreJob.class).error(getName(), e);
			}
			onUi(() -> refused.accept(String.valueOf(e.getMessage())));
		}
		return Status.OK_STATUS;
	}

	private static void onUi(Runnable news) {
		if (PlatformUI.isWorkbenchRunning()) {
			Display display = PlatformUI.getWorkbench().getDisplay();
			if (!display.isDisposed()) {
				display.asyncExec(news);
			}
		}
	}
}
