package org.frisket.ui.bench.internal.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.PartInitException;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.JobHome;
import org.frisket.model.Jobs;
import org.frisket.model.WholeFile;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.bench.UntitledInput;
import org.frisket.ui.bench.internal.files.BenchPreferences;
import org.frisket.ui.bench.internal.files.FileStamp;
import org.frisket.ui.bench.internal.files.Recovery;
import org.frisket.ui.bench.internal.files.RecoveryStore;
import org.frisket.ui.bench.internal.files.Unsaved;
import org.frisket.ui.bench.internal.picture.JobPicture;
import org.frisket.ui.bench.internal.picture.TriedPicture;

/** An open job with the file it came from and its last good picture. Only for the UI thread. */
public final class BenchDocument {

	private final Job job;
	private final List<Runnable> pictureListeners = new CopyOnWriteArrayList<>();
	/** Which job a recovery copy would be of; tells the file too. */
	private Unsaved origin;
	/** Where else than in a file it is kept; null for nowhere. */
	private JobPlace place;
	/** The job as it was there; empty if it is in a file. */
	private volatile byte[] base = new byte[0];
	private boolean recovered;
	private boolean detached;
	private JobPicture picture = JobPicture.NONE;
	private final TriedPicture tried = new TriedPicture();

	private BenchDocument(Job job, Unsaved origin, boolean recovered) {
		this.job = job;
		this.origin = origin;
		this.recovered = recovered;
		// a copy that was recovered lies elsewhere
		JobHome.set(job, origin.original().orElse(null));
		tried.addListener(() -> pictureListeners.forEach(Runnable::run));
	}

	/**
	 * The job that an editor is asked to show, with what was not saved of it.
	 *
	 * @throws IOException       with a message for the user that names the file, the place and the reason
	 * @throws PartInitException if the input is of no job
	 */
	static BenchDocument of(IEditorInput input) throws IOException, PartInitException {
		if (input instanceof JobInput job) {
			return open(job.path(), Recovery.store());
		}
		if (input instanceof UntitledInput untitled) {
			return untitled(untitled.number(), Recovery.store());
		}
		throw new PartInitException(NLS.bind(Messages.BenchEditor_wrongInput, input.getName()));
	}

	/**
	 * The job of a file, or what was not saved of it when the program ended.
	 *
	 * @throws IOException with a message for the user that names the file, the place and the reason
	 */
	static BenchDocument open(Path path, RecoveryStore store) throws IOException {
		WholeFile.tidy(path);
		Optional<Unsaved> unsaved = store.find(path);
		Optional<Job> copy = unsaved.isPresent() ? copy(unsaved.get(), store) : Optional.empty();
		if (copy.isPresent()) {
			return new BenchDocument(copy.get(), unsaved.get(), true);
		}
		// the stamp first: a change between the two is then noticed rather than missed
		FileStamp stamp = FileStamp.of(path);
		return new BenchDocument(JobFile.load(path), Unsaved.of(path, stamp), false);
	}

	/**
	 * What was not saved when the program ended of a job that is kept elsewhere than in a file; empty if there is nothing of
	 * the kind. It does not ask that place, which may not answer.
	 */
	static Optional<BenchDocument> unsaved(JobPlace place, RecoveryStore store) throws IOException {
		Optional<Unsaved> unsaved = store.findAt(place.key());
		Optional<Job> copy = unsaved.isPresent() ? copy(unsaved.get(), store) : Optional.empty();
		if (copy.isEmpty()) {
			return Optional.empty();
		}
		BenchDocument document = new BenchDocument(copy.get(), unsaved.get(), true);
		document.place = place;
		document.base = store.base(unsaved.get());
		return Optional.of(document);
	}

	/**
	 * A job that is kept elsewhere than in a file.
	 *
	 * @throws IOException if what is held there cannot be read
	 */
	static BenchDocument of(JobPlace place, JobPlace.Held held) throws IOException {
		BenchDocument document = new BenchDocument(held.job(), Unsaved.at(place.key(), held.mark()), false);
		document.place = place;
		document.base = held.content();
		return document;
	}

	/** A new job without a file, or what there was of it when the program ended. */
	static BenchDocument untitled(int number, RecoveryStore store) {
		Unsaved origin = Unsaved.untitled(number);
		Optional<Job> copy = copy(origin, store);
		return new BenchDocument(copy.orElseGet(() -> fresh(number)), origin, copy.isPresent());
	}

	private static Job fresh(int number) {
		return number == UntitledInput.SAMPLE.number() ? FerryBanner.make() : empty();
	}

	/** A copy that cannot be read must not stand before the file, which can. */
	private static Optional<Job> copy(Unsaved unsaved, RecoveryStore store) {
		try {
			return store.read(unsaved);
		} catch (IOException e) {
			Recovery.log(e);
			return Optional.empty();
		}
	}

	private static Job empty() {
		Job job = Jobs.create("job", ""); //$NON-NLS-1$ //$NON-NLS-2$
		Jobs.addLayer(job, BenchPreferences.stockName(Messages.BenchDocument_firstLayer))
				.setColour(BenchPreferences.stockColour());
		return job;
	}

	public Job job() {
		return job;
	}

	/** Where its file is; empty if it was never saved. */
	public Optional<Path> path() {
		return origin.original();
	}

	/** Where else than in a file it is kept. */
	Optional<JobPlace> place() {
		return Optional.ofNullable(place);
	}

	/** The job as it was there when it was taken out or kept last; empty if that is not known. Safe on any thread. */
	byte[] base() {
		return base;
	}

	/** What is shown is what is held at its place now. */
	void keptAt(JobPlace.Held held) {
		heldAt(held);
		detached = false;
	}

	/** What is shown was made of what is held at its place now, and is not kept there yet. */
	void heldAt(JobPlace.Held held) {
		origin = Unsaved.at(place.key(), held.mark());
		base = held.content();
		recovered = false;
		detached = true;
	}

	Unsaved origin() {
		return origin;
	}

	/** Whether it was brought back from a recovery copy and not saved since. */
	boolean isRecovered() {
		return recovered;
	}

	/** Whether the file is not what is shown even where nothing was edited here. */
	boolean isUnlikeItsFile() {
		return recovered || detached;
	}

	/** Writes the job, and takes the path as its own from now on. */
	void save(Path target) throws IOException {
		JobFile.save(job, target);
		origin = Unsaved.of(target, FileStamp.of(target));
		JobHome.set(job, target);
		place = null;
		recovered = false;
		detached = false;
	}

	/** It holds what its file held when it had this stamp. */
	void reloaded(FileStamp stamp) {
		path().ifPresent(path -> origin = Unsaved.of(path, stamp));
		recovered = false;
		detached = false;
	}

	/** Whether somebody else has written or removed the file since it was read or saved here. */
	OutsideChange outsideChange() {
		return path().map(path -> OutsideChange.between(origin.stamp(), FileStamp.of(path)))
				.orElse(OutsideChange.NONE);
	}

	/** What is shown is to stand although the file is another, or is gone; it is then as if it had been edited. */
	void keepDespiteFile() {
		path().ifPresent(path -> origin = Unsaved.of(path, FileStamp.of(path)));
		detached = true;
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
