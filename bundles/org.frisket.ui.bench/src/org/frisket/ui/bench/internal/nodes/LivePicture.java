package org.frisket.ui.bench.internal.nodes;

import java.util.function.Consumer;

import org.frisket.model.Job;
import org.frisket.ui.bench.internal.editor.BenchDocument;

/**
 * Pictures of a job as it would be after a drag that goes on. One is asked for at a time, so that a slow one is seen in
 * the end and not called off by every move of the pointer.
 */
public final class LivePicture {

	private final BenchDocument document;
	private final Consumer<Job> pictures;
	private Consumer<Job> next;
	private boolean underWay;
	private boolean strayed;

	/** @param pictures has a picture made of a job that nobody changes any more */
	public LivePicture(BenchDocument document, Consumer<Job> pictures) {
		this.document = document;
		this.pictures = pictures;
		document.addPictureListener(this::pictureMade);
	}

	/** Shows the job as a change makes a copy of it, as soon as may be. */
	public void show(Consumer<Job> change) {
		next = change;
		strayed = true;
		if (!underWay) {
			ask();
		}
	}

	/** Shows the job as it is; one that has just been changed asks for its picture itself. */
	public void stop(boolean changed) {
		next = null;
		underWay = false;
		if (strayed && !changed) {
			pictures.accept(document.snapshot());
		}
		strayed = false;
	}

	private void ask() {
		Job job = document.snapshot();
		next.accept(job);
		next = null;
		underWay = true;
		pictures.accept(job);
	}

	private void pictureMade() {
		underWay = false;
		if (next != null) {
			ask();
		}
	}
}
