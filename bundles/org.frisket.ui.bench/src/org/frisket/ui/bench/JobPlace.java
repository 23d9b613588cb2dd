package org.frisket.ui.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

import org.frisket.editing.Edit;
import org.frisket.editing.ReloadJob;
import org.frisket.model.Job;
import org.frisket.model.JobFile;

/**
 * Where a job on a bench comes from and goes to. One that is no file is laid on the bench by a {@link PlaceInput}.
 * Recovery copies are made of all jobs alike.
 */
public interface JobPlace {

	/**
	 * What is held of a job.
	 *
	 * @param content the bytes of its file
	 * @param mark    is another one when something else is held
	 */
	record Held(byte[] content, String mark) {

		/**
		 * The job; each time one of its own.
		 *
		 * @param name what messages call it
		 * @throws IOException if it cannot be read
		 */
		public Job job(String name) throws IOException {
			return JobFile.load(content, name);
		}
	}

	/** Somebody else has changed what is held since the job was taken out. */
	class OvertakenException extends IOException {

		private static final long serialVersionUID = 1L;

		public OvertakenException(String message, Throwable cause) {
			super(message, cause);
		}
	}

	/** Of the workbench's element factories, the one that makes an input of a key ({@link PlaceInput#KEY}). */
	String factory();

	/**
	 * Tells it from all other places, also when the program is started again: the id of its factory, a colon, and what
	 * that factory knows it by.
	 */
	String key();

	/** What the tab of the bench says. */
	String name();

	/** The same at more length. */
	String toolTip();

	/** Whether it may take its time to answer, so that the screen never waits for it; a file is at hand. */
	default boolean isFar() {
		return true;
	}

	/** Whether a job can be kept here at all; if not, it is asked for a file first. */
	default boolean canKeep() {
		return true;
	}

	/** Whether a job that is saved as a file is kept in that from then on; if not, the file is a copy to give away. */
	default boolean isLeftForFiles() {
		return false;
	}

	/** The file, if this is one. */
	default Optional<Path> file() {
		return Optional.empty();
	}

	/** Takes the job out. Of a far place, none for the UI thread. @throws IOException with a message for people */
	Held load() throws IOException;

	/**
	 * Keeps a job in place of what is held, all of it or nothing. Of a far place, none for the UI thread.
	 *
	 * @param content of its file
	 * @param mark    of what it was made of
	 * @return what is held then
	 * @throws OvertakenException if something else is held by now; nothing is kept then
	 * @throws IOException        with a message for people
	 */
	Held save(byte[] content, String mark) throws IOException;

	/** The edit by which a bench shows what is held. @param held belongs to the edit from then on */
	default Edit taking(Job job, Job held) {
		return ReloadJob.taken(job, held);
	}

	/**
	 * A job of this place lies on a bench from now on, and this place tells that bench of what others do to it.
	 *
	 * @return called when the bench is closed, or the job is kept elsewhere
	 */
	Runnable watch(PlacedBench bench);

	/** What is on the bench was kept here just now. @param snapshot a copy of the job that nobody changes any more */
	default void kept(PlacedBench bench, Job snapshot) {
		// most have nothing more to do
	}

	/**
	 * The job could not be kept because somebody else was quicker: asks what is to be done, and does it.
	 *
	 * @param theirs what is held now
	 * @return whether all that is on the bench is kept in the end
	 */
	boolean overtaken(PlacedBench bench, Held theirs);
}
