package org.frisket.ui.bench.internal.typing;

import org.eclipse.gef.commands.CommandStack;
import org.frisket.editing.Edit;
import org.frisket.editing.EditGroup;
import org.frisket.editing.wording.ChangeSpan;
import org.frisket.editing.wording.TypeWording;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.editor.EditCommand;

/** Brings what is typed into the job, all of it as one step of undo. */
final class TypingStep {

	/** What became of the step. */
	enum Outcome {
		/** It is on the command stack now. */
		BEGUN,
		/** It is there still, with another text. */
		CONTINUED,
		/** A new wording lost its last letter: it is in no job any more, nor is there a step. */
		WITHDRAWN
	}

	private final Job job;
	private final CommandStack stack;
	private TypeWording edit;

	TypingStep(Job job, CommandStack stack) {
		this.job = job;
		this.stack = stack;
	}

	Outcome write(Wording wording, TypedText text) {
		if (edit == null) {
			edit = Jobs.jobOf(wording) == null ? TypeWording.onto(job, wording, text.text())
					: TypeWording.into(wording, text.text(), text.caret());
			stack.execute(new EditCommand(edit));
			return Outcome.BEGUN;
		}
		if (text.text().isEmpty() && edit.isNew()) {
			stack.undo();
			edit = null;
			return Outcome.WITHDRAWN;
		}
		edit.retype(text.text(), text.caret());
		return Outcome.CONTINUED;
	}

	/** Whether a wording that was there before has lost its last letter. */
	boolean hasEmptied(TypedText text) {
		return edit != null && !edit.isNew() && text.text().isEmpty();
	}

	/** What is typed from now on is another step. */
	void end() {
		edit = null;
	}

	/** Whether an edit only sets letters of a wording otherwise, so that its text and the caret stay as they are. */
	static boolean isOfLetters(Edit change, Wording wording) {
		return change instanceof ChangeSpan span ? span.wording() == wording
				: change instanceof EditGroup group
						&& group.edits().stream().allMatch(each -> isOfLetters(each, wording));
	}
}
