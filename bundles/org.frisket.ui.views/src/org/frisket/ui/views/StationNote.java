package org.frisket.ui.views;

/** What is known of one station of the way of the job on a bench. Only for the UI thread. */
public interface StationNote {

	/** How far it is, in words and numbers; empty while nothing is known yet. */
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
