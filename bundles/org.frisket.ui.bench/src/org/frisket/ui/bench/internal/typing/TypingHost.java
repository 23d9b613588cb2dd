package org.frisket.ui.bench.internal.typing;

/** What typing asks of the editor. */
public interface TypingHost {

	/** Carets are wanted of the wording of this id, now and with every further picture; null for none. */
	void follow(String id);

	/** The job has changed within the step that was done last. */
	void retyped();

	/** Other letters are selected within what is typed. */
	void rangeChanged();

	/** While a wording is typed, letters and arrows are no keys of the bench. */
	void setTyping(boolean typing);

	/** Says something to the user; null for nothing. */
	void say(String message);
}
