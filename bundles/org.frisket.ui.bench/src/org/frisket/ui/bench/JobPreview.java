package org.frisket.ui.bench;

import org.frisket.geometry.Point;
import org.frisket.model.Job;

/**
 * A job as it would be after an edit that is not made yet, seen in place of the one on the bench, and marks on it. The
 * job itself stays as it is; whatever changes it ends the preview. Only for the UI thread.
 */
public interface JobPreview {

	/**
	 * Shows what a job would look like; a little later, as it is worked through first. What was shown before stays
	 * until then.
	 *
	 * @param tried a changed copy of the job, which nobody changes any more
	 */
	void show(Job tried);

	/** Whether a job that was given to be shown can be compared with the one on the bench now. */
	boolean isThere();

	/** Whether the job is seen as it would be, and not as it is. */
	boolean isAfter();

	/** From the job as it would be to the job as it is, and back; nothing happens while there is only one. */
	void toggle();

	/** Shows the job as it is, and no mark. */
	void hide();

	/**
	 * Plants a flag on a place, in place of the one before, and brings it into view.
	 *
	 * @param place  in mm
	 * @param number on the flag
	 * @param text   beside the number
	 */
	void mark(Point place, String number, String text);

	/** Takes the flag away. */
	void unmark();

	/** Shows a place in mm from near by. */
	void lookClosely(Point place);
}
