package org.frisket.ui.bench.internal.nodes;

import java.util.function.Consumer;

import org.frisket.geometry.nodes.NodePath;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.frisket.ui.bench.internal.editor.BenchDocument;

/**
 * Pictures of a job as it would be with another path, while that is dragged. One is asked for at a time, so that a slow
 * one is seen in the end and not called off by every move of the pointer.
 */
final class LivePicture {

	private final BenchDocument document;
	private final Consumer<Job> pictures;
	private Outline outline;
	private NodePath next;
	private boolean underWay;
	private boolean strayed;

	/** @param pictures has a picture made of a job that nobody changes any more */
	LivePicture(BenchDocument document, Consumer<Job> pictures) {
		this.document = document;
		this.pictures = pictures;
		document.addPictureListener(this::pictureMade);
	}

	/** Shows the job with this path of an outline, as soon as may be. */
	void show(Outline changed, NodePath path) {
		outline = changed;
		next = path;
		strayed = true;
		if (!underWay) {
			ask();
		}
	}

	/** Shows the job as it is; one that has just been changed asks for its picture itself. */
	void stop(boolean changed) {
		next = null;
		underWay = false;
		if (strayed && !changed) {
			pictures.accept(document.snapshot());
		}
		strayed = false;
	}

	private void ask() {
		Job job = document.snapshot();
		String pathData = next.pathData();
		Jobs.element(job, outline.getId()).filter(Outline.class::isInstance).map(Outline.class::cast)
				.ifPresent(copy -> copy.setPathData(pathData));
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
