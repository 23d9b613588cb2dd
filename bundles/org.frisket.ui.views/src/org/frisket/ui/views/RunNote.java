package org.frisket.ui.views;

/**
 * What is known of the runs of the job on a bench. The job adapts to it where a bundle brings it. Only for the UI thread.
 */
public interface RunNote {

	/** What all its sheets take, in words; empty while nothing is laid or nothing is known yet. */
	String words();

	/** Whether that holds for the job as it is now. */
	boolean isUpToDate();

	/**
	 * Has somebody told when anything is known otherwise.
	 *
	 * @return ends it
	 */
	Runnable watch(Runnable changed);
}
