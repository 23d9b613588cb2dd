package org.frisket.ui.bench;

import java.io.IOException;
import java.util.List;

import org.eclipse.swt.widgets.Shell;
import org.frisket.model.Job;

/** A bench as the {@link JobPlace} of its job sees it. Only for the UI thread. */
public interface PlacedBench {

	/** One way on that is offered. */
	record Choice(String label, Runnable action) {
	}

	/** The job as it is on the bench, with what this version does not know of it; one of its own. */
	Job job() throws IOException;

	/** The job as it was taken out of a far place or kept there last; of no length if that is not known. */
	byte[] base();

	/** The mark of what was held when the job was taken out or kept last. */
	String mark();

	/** Whether there is anything on the bench that is not kept. */
	boolean isDirty();

	/** Whether it is being kept just now: what is held may be its own already. */
	boolean isSaving();

	/** Whether the bench is closed. */
	boolean isClosed();

	Shell shell();

	/** Has somebody told whenever the user comes back to this bench. @return ends it */
	Runnable whenBack(Runnable told);

	/** Says something above the bench in place of what was said before. */
	void tell(String text, List<Choice> choices);

	/** Has nothing said above the bench. */
	void hush();

	/** Says something in passing. */
	void say(String text);

	/** The same of something that went wrong. */
	void warn(String text);

	/** Shows what is held, which is one step of undo, and is as kept then. @throws IOException if it cannot be read */
	void take(JobPlace.Held held) throws IOException;

	/** The same once it is taken out. Where that fails, the job stays and the reason is told. */
	void reload();

	/** What is on the bench is to stand although something else is held; it is then as if it had been edited. */
	void keepDespite(String mark);

	/**
	 * Shows a job that was made of the one on the bench and of what is held, which is one step of undo, and keeps it.
	 *
	 * @param merged belongs to the bench from now on
	 * @return whether it is kept
	 */
	boolean merge(Job merged, JobPlace.Held held);

	/** Keeps the job in its place. @return whether it is kept in the end */
	boolean save();

	/**
	 * Keeps the job in a file, which is asked for.
	 *
	 * @return whether there is nothing on the bench then that is not kept
	 */
	boolean saveAs();
}
