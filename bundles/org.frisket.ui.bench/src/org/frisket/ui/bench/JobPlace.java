package org.frisket.ui.bench;

import java.io.IOException;

import org.frisket.model.Job;
import org.frisket.model.JobFile;

/**
 * Where a job on a bench comes from and goes to, if that is no file of its own. It is laid on the bench by a
 * {@link PlaceInput}. Recovery copies are made of it as of any other.
 */
public interface JobPlace {

	/**
	 * What is held of a job.
	 *
	 * @param content the bytes of its file
	 * @param mark    is another one when something else is held
	 */
	record Held(byte[] content, String mark) {

		/** The job; each time one of its own. @throws IOException if it cannot be read */
		public Job job() throws IOException {
			return JobFile.load(content, mark);
		}
	}

	/** Somebody else has changed what is held since the job was taken out. */
	class OvertakenException extends IOException {

		private static final long serialVersionUID = 1L;

		public OvertakenException(String message, Throwable cause) {
			super(message, cause);
		}
	}

	/** Of the workbench's element factories, the one that makes a {@link PlaceInput} of a key ({@link PlaceInput#KEY}). */
	String factory();

	/**
	 * Tells it from all other places, also when the program is started again: the id of its factory, a colon, and what that
	 * factory knows it by.
	 */
	String key();

	/** What the tab of the bench says. */
	String name();

	/** The same at more length. */
	String toolTip();

	/** Takes the job out. May wait; none for the UI thread. @throws IOException with a message for people */
	Held load() throws IOException;

	/**
	 * Keeps a job in place of what is held, all of it or nothing. May wait; none for the UI thread.
	 *
	 * @param content of its file
	 * @param mark    of what it was made of
	 * @return what is held then
	 * @throws OvertakenException if something else is held by now; nothing is kept then
	 * @throws IOException        with a message for people
	 */
	Held save(byte[] content, String mark) throws IOException;

	/**
	 * A job of this place lies on a bench from now on, and this place tells that bench of what others do to it.
	 *
	 * @return called when the bench is closed
	 */
	Runnable watch(PlacedBench bench);

	/**
	 * The job could not be kept because somebody else was quicker: asks what is to be done, and does it.
	 *
	 * @param theirs what is held now
	 * @return whether all that is on the bench is kept in the end
	 */
	boolean overtaken(PlacedBench bench, Held theirs);
}
