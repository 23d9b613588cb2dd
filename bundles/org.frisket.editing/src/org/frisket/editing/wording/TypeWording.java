package org.frisket.editing.wording;

import java.util.Objects;

import org.frisket.editing.Edit;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.elements.PlaceElement;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Job;
import org.frisket.model.PreviewColours;
import org.frisket.model.TextChange;
import org.frisket.model.Wording;

/**
 * A wording being typed: one step however many keys are pressed. It is applied with the first of them, and each further
 * one {@linkplain #retype retypes} it while it is the last edit of its job.
 */
public final class TypeWording extends Edit {

	/** What a layer is called that is made for the first wording. */
	public static final String LAYER_NAME = "Wording";

	private final Wording wording;
	private final RecordingEdit adding;
	private final String before;
	private LetterMarks marksBefore;
	private String text;
	/** Nudges and spans at their letters of the text as it was typed last. */
	private LetterMarks marks;
	/** The first change if more is known of it than the texts tell; else null. */
	private TextChange first;
	private boolean applied;

	private TypeWording(Wording wording, RecordingEdit adding, String text) {
		this.wording = wording;
		this.adding = adding;
		this.text = text;
		before = wording.getText();
	}

	/**
	 * A new wording, on a layer as {@link PlaceElement} finds or makes it.
	 *
	 * @param wording as it is to be, in no job yet
	 */
	public static TypeWording onto(Job job, Wording wording, String text) {
		return new TypeWording(wording,
				new PlaceElement(job, wording, LAYER_NAME, PreviewColours.WORDING), text);
	}

	/** Other words in a wording that is there. */
	public static TypeWording into(Wording wording, String text) {
		return new TypeWording(wording, null, text);
	}

	/**
	 * Other words in a wording that is there, by one change.
	 *
	 * @param caret index in the text after what was put in or taken out
	 */
	public static TypeWording into(Wording wording, String text, int caret) {
		TypeWording edit = into(wording, text);
		edit.first = TextChange.typed(LetterMarks.orEmpty(edit.before), text, caret);
		return edit;
	}

	/** Says something else now, without a further step. */
	public void retype(String newText) {
		retype(newText, TextChange.between(LetterMarks.orEmpty(text), LetterMarks.orEmpty(newText)));
	}

	/**
	 * As {@link #retype(String)} where the caret tells which of equal letters were typed or deleted.
	 *
	 * @param caret index in the text after what was put in or taken out
	 */
	public void retype(String newText, int caret) {
		retype(newText, TextChange.typed(LetterMarks.orEmpty(text), newText, caret));
	}

	private void retype(String newText, TextChange change) {
		if (!applied) {
			throw new IllegalStateException("'" + name() + "' is not applied");
		}
		text = newText;
		LetterMarks.retext(wording, newText, change);
		marks = LetterMarks.of(wording);
	}

	/** Whether the wording is made by this edit. */
	public boolean isNew() {
		return adding != null;
	}

	public Wording wording() {
		return wording;
	}

	@Override
	public String name() {
		return isNew() ? Messages.TypeWording_new : Messages.ChangeWording_text;
	}

	@Override
	public boolean canApply() {
		return isNew() ? adding.canApply() : Targets.free(wording) && !Objects.equals(text, before);
	}

	@Override
	public void apply() {
		if (!canApply()) {
			throw new IllegalStateException("'" + name() + "' cannot be applied");
		}
		marksBefore = LetterMarks.of(wording);
		LetterMarks.retext(wording, text,
				first != null ? first : TextChange.between(LetterMarks.orEmpty(before), LetterMarks.orEmpty(text)));
		marks = LetterMarks.of(wording);
		if (isNew()) {
			adding.apply();
		}
		applied = true;
	}

	@Override
	public void undo() {
		if (isNew()) {
			adding.undo();
		} else {
			wording.setText(before);
			marksBefore.restore(wording);
		}
		applied = false;
	}

	@Override
	public void redo() {
		if (isNew()) {
			adding.redo();
		} else {
			wording.setText(text);
			marks.restore(wording);
		}
		applied = true;
	}
}
