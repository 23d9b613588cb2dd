package org.frisket.ui.bench.internal.editor;

import java.util.List;
import java.util.Map;

import org.eclipse.swt.widgets.Display;
import org.frisket.model.Job;
import org.frisket.prepare.Finding;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.wording.CaretPlace;
import org.frisket.prepare.wording.LetterPlace;
import org.frisket.ui.bench.internal.picture.JobPicture;

/** Has the picture of an editor's job follow the job, and knows whether it has caught up. Only for the UI thread. */
final class BenchPicture implements PictureJob.Client {

	private final BenchSurface editor;
	private final PictureJob maker;
	private boolean complete;

	BenchPicture(BenchSurface editor, Display display) {
		this.editor = editor;
		maker = new PictureJob(display, this);
	}

	/**
	 * Asks for another picture; from now on the present one is out of date.
	 *
	 * @param job nobody changes it any more
	 */
	void follow(Job job) {
		complete = false;
		maker.request(job);
	}

	/**
	 * As {@link #follow} for a change that goes on, such as a word being typed: of the pictures before, some are shown.
	 */
	void followOn(Job job) {
		complete = false;
		maker.requestNext(job);
	}

	/** Asks for carets of the wording of this id, now and with every further picture; null for none. */
	void followTyping(String id) {
		maker.setTyped(id);
		if (id != null) {
			followOn(editor.document().snapshot());
		}
	}

	/** Asks for the letters of the wording of this id, now and with every further picture; null for none. */
	void followLetters(String id) {
		maker.setLettered(id);
		if (id != null) {
			followOn(editor.document().snapshot());
		}
	}

	/** Has what helps against a finding looked for. */
	void seekCures(Finding finding) {
		maker.seekCures(finding);
	}

	/** Whether it is that of the job as it is, findings included. */
	boolean isComplete() {
		return complete;
	}

	@Override
	public void pictureMade(JobPicture picture, boolean allFindings) {
		complete = allFindings;
		// letters that are shown before their mats: what the views read of them comes with these
		boolean ahead = !allFindings && picture.prepared() != null
				&& picture.prepared() == editor.document().picture().prepared();
		editor.document().setPicture(picture);
		editor.canvas().fitOnce();
		editor.status().update();
		if (!ahead) {
			editor.onBench().pictureChanged();
		}
	}

	@Override
	public void caretsMade(List<CaretPlace> places) {
		editor.typing().caretsMade(places);
	}

	@Override
	public void lettersMade(List<LetterPlace> letters) {
		editor.letters().lettersMade(letters);
	}

	@Override
	public void curesMade(Map<Finding, List<Cure>> cures) {
		editor.onBench().curesMade(cures);
	}

	@Override
	public void pictureFailed(String message) {
		editor.say(message);
	}

	void close() {
		maker.close();
	}
}
