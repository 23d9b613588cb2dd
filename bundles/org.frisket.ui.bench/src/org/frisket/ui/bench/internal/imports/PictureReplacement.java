package org.frisket.ui.bench.internal.imports;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.IntConsumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.ChangePicture;
import org.frisket.imports.ImportSource;
import org.frisket.imports.LargestFile;
import org.frisket.imports.UnreadableArtException;
import org.frisket.model.ImageBytes;
import org.frisket.model.Picture;
import org.frisket.prepare.pictures.PictureFile;

/** Reads the file that is to take the place of a picture, off the UI thread. Of a file with pages one is asked for. */
public final class PictureReplacement extends Job {

	private static final int MICRONS = 1000;

	/** Asked on the UI thread which page is meant. */
	@FunctionalInterface
	public interface PageQuestion {

		/** @param pages how many there are @param chosen told the page, from 1, unless it is none of them */
		void ask(int pages, IntConsumer chosen);
	}

	private final Display display;
	private final Picture picture;
	private final Path file;
	private final PageQuestion question;
	private final Consumer<Edit> edits;
	private final Consumer<String> teller;

	/** @param edits takes the edit, and @param teller what went wrong, both on the UI thread */
	public PictureReplacement(Display display, Picture picture, Path file, PageQuestion question, Consumer<Edit> edits,
			Consumer<String> teller) {
		super(NLS.bind(Messages.PictureReplacement_name, file.getFileName()));
		this.display = display;
		this.picture = picture;
		this.file = file;
		this.question = question;
		this.edits = edits;
		this.teller = teller;
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		try (InputStream in = LargestFile.open(ImportSource.of(file))) {
			ImageBytes bytes = ImageBytes.of(in.readAllBytes());
			PictureFile first = PictureFile.of(bytes);
			if (first.pages() == 1) {
				take(monitor, bytes, first);
			} else {
				onScreen(monitor, () -> question.ask(first.pages(), page -> read(bytes, page)));
			}
		} catch (IOException | UnreadableArtException e) {
			onScreen(monitor, () -> failed(e));
		}
		return Status.OK_STATUS;
	}

	private void read(ImageBytes bytes, int page) {
		Job.create(getName(), monitor -> {
			try {
				take(monitor, bytes, PictureFile.of(bytes, page));
			} catch (IOException e) {
				onScreen(monitor, () -> failed(e));
			}
		}).schedule();
	}

	private void take(IProgressMonitor monitor, ImageBytes bytes, PictureFile read) {
		onScreen(monitor, () -> edits.accept(ChangePicture.replace(picture, bytes, read.mediaType(), across(read), down(read))));
	}

	private void failed(Exception e) {
		teller.accept(NLS.bind(Messages.PictureReplacement_failed, file, e.getMessage()));
	}

	/** Of what has no pixels, in µm: those that it would be drawn with are rounded. */
	private static int across(PictureFile file) {
		return file.isDrawn() ? (int) Math.round(MICRONS * file.trueWidth()) : file.width();
	}

	private static int down(PictureFile file) {
		return file.isDrawn() ? (int) Math.round(MICRONS * file.trueHeight()) : file.height();
	}

	private void onScreen(IProgressMonitor monitor, Runnable action) {
		if (!monitor.isCanceled() && !display.isDisposed()) {
			display.asyncExec(action);
		}
	}
}
