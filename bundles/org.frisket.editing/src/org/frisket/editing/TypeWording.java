package org.frisket.editing;

import java.util.Objects;

import org.frisket.model.Job;
import org.frisket.model.PreviewColours;
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
	private String text;
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

	/** Says something else now, without a further step. */
	public void retype(String newText) {
		if (!applied) {
			throw new IllegalStateException("'" + name() + "' is not applied");
		}
		text = newText;
		wording.setText(newText);
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
		wording.setText(text);
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
		}
		applied = false;
	}

	@Override
	public void redo() {
		if (isNew()) {
			adding.redo();
		} else {
			wording.setText(text);
		}
		applied = true;
	}
}
