package org.frisket.ui.bench.internal.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.ui.bench.internal.picture.JobPicture;

/** An open job with the file it came from and its last good picture. Only for the UI thread. */
public final class BenchDocument {

	private final Job job;
	private final List<Runnable> pictureListeners = new CopyOnWriteArrayList<>();
	private Path path;
	private FileStamp stamp;
	private JobPicture picture = JobPicture.NONE;

	private BenchDocument(Job job, Path path, FileStamp stamp) {
		this.job = job;
		this.path = path;
		this.stamp = stamp;
	}

	/** @throws IOException with a message for the user that names the file, the place and the reason */
	static BenchDocument open(Path path) throws IOException {
		// the stamp first: a change between the two is then noticed rather than missed
		FileStamp stamp = FileStamp.of(path);
		return new BenchDocument(JobFile.load(path), path, stamp);
	}

	public Job job() {
		return job;
	}

	public Path path() {
		return path;
	}

	/** Writes the job, and takes the path as its own from now on. */
	void save(Path target) throws IOException {
		JobFile.save(job, target);
		path = target;
		stamp = FileStamp.of(target);
	}

	/** Whether somebody else has written or removed the file since it was read or saved here. */
	boolean isChangedOutside() {
		FileStamp now = FileStamp.of(path);
		return now.isFile() && !now.equals(stamp);
	}

	/** A copy that may be worked on while the job itself is edited. */
	Job snapshot() {
		return EcoreUtil.copy(job);
	}

	public JobPicture picture() {
		return picture;
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
