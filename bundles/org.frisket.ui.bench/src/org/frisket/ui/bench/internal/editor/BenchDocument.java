package org.frisket.ui.bench.internal.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.frisket.model.Job;
import org.frisket.model.JobHome;
import org.frisket.prepare.pictures.LinkedPictures;
import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.bench.internal.files.Recovery;
import org.frisket.ui.bench.internal.files.RecoveryStore;
import org.frisket.ui.bench.internal.files.Unsaved;
import org.frisket.ui.bench.internal.picture.JobPicture;
import org.frisket.ui.bench.internal.picture.TriedPicture;
import org.frisket.ui.bench.internal.places.Copies;

/** An open job with the place it came from and its last good picture. Only for the UI thread. */
public final class BenchDocument {

	private static final byte[] UNKNOWN = new byte[0];

	private final Job job;
	private final List<Runnable> pictureListeners = new CopyOnWriteArrayList<>();
	private JobPlace place;
	/** Of what was held there when the job was taken out or kept last. */
	private String mark;
	/** The job as it was there, if that place is far; else empty. */
	private volatile byte[] base;
	private boolean recovered;
	private boolean detached;
	private JobPicture picture = JobPicture.NONE;
	private final TriedPicture tried = new TriedPicture();

	private BenchDocument(Job job, JobPlace place, String mark, byte[] base, boolean recovered) {
		this.job = job;
		this.place = place;
		this.mark = mark;
		this.base = base;
		this.recovered = recovered;
		// a copy that was recovered lies elsewhere
		JobHome.set(job, place.file().orElse(null));
		tried.addListener(() -> pictureListeners.forEach(Runnable::run));
	}

	/**
	 * What was not saved of a job when the program ended; empty if there is nothing of the kind. It does not ask the
	 * place, which may not answer. A copy that cannot be read must not stand before what is held, which can.
	 */
	static Optional<BenchDocument> unsaved(JobPlace place, RecoveryStore store) {
		try {
			Optional<Unsaved> unsaved = store.find(Copies.of(place, "")); //$NON-NLS-1$
			Optional<Job> copy = unsaved.isPresent() ? store.read(unsaved.get()) : Optional.empty();
			return copy.isEmpty() ? Optional.empty()
					: Optional.of(new BenchDocument(copy.get(), place, Copies.mark(unsaved.get()),
					store.base(unsaved.get()), true));
		} catch (IOException e) {
			Recovery.log(e);
			return Optional.empty();
		}
	}

	/**
	 * A job as it is held.
	 *
	 * @throws IOException if it cannot be read; the message is for people
	 */
	static BenchDocument of(JobPlace place, JobPlace.Held held) throws IOException {
		return new BenchDocument(held.job(place.toolTip()), place, held.mark(), base(place, held), false);
	}

	private static byte[] base(JobPlace place, JobPlace.Held held) {
		return place.isFar() ? held.content() : UNKNOWN;
	}

	public Job job() {
		return job;
	}

	/** Where its file is; empty if it is in none. */
	public Optional<Path> path() {
		return place.file();
	}

	JobPlace place() {
		return place;
	}

	String mark() {
		return mark;
	}

	/** The job as it was in a far place when it was taken out or kept last; else empty. Safe on any thread. */
	byte[] base() {
		return base;
	}

	/** Which job a recovery copy would be of. */
	Unsaved origin() {
		return Copies.of(place, mark);
	}

	/** What is shown is what is held there now, and that is its place from now on. */
	void keptAt(JobPlace where, JobPlace.Held held) {
		place = where;
		Path before = JobHome.of(job).orElse(null);
		JobHome.set(job, where.file().orElse(null));
		// no change of the job: its links mean the same as before
		LinkedPictures.moved(job, before, where.file().orElse(null));
		heldAt(held);
		detached = false;
	}

	/** What is shown was made of what is held at its place now, and is not kept there yet. */
	void heldAt(JobPlace.Held held) {
		base = base(place, held);
		recovered = false;
		keepDespite(held.mark());
	}

	/** What is shown is to stand although something else is held; it is then as if it had been edited. */
	void keepDespite(String held) {
		mark = held;
		detached = true;
	}

	/** Whether it was brought back from a recovery copy and not saved since. */
	boolean isRecovered() {
		return recovered;
	}

	/** Whether what is held is not what is shown even where nothing was edited here. */
	boolean isUnlikeHeld() {
		return recovered || detached;
	}

	/** A copy that may be worked on while the job itself is edited. */
	public Job snapshot() {
		return JobHome.copy(job);
	}

	public JobPicture picture() {
		return picture;
	}

	/** What the job would look like after an edit that is weighed. */
	public TriedPicture tried() {
		return tried;
	}

	void setPicture(JobPicture newPicture) {
		picture = newPicture;
		pictureListeners.forEach(Runnable::run);
	}

	public void addPictureListener(Runnable listener) {
		pictureListeners.add(listener);
	}

	public void removePictureListener(Runnable listener) {
		pictureListeners.remove(listener);
	}
}
