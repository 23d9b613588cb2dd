package org.frisket.ui.views;

import java.util.Optional;

/**
 * What the studio knows of stocks, for those who show layers. The stack adapts to it where a bundle brings it, and shows
 * ids where none does. Only for the UI thread.
 */
public interface StockNotes {

	/**
	 * What is known of a stock.
	 *
	 * @param caliperMm its thickness in mm; 0 if it is not known
	 */
	record Note(String name, double caliperMm) {
	}

	/** Of the stock of this id; empty if the studio has none, or has not been looked at yet. */
	Optional<Note> of(String id);

	/**
	 * Has somebody told when anything is known otherwise.
	 *
	 * @return ends it
	 */
	Runnable watch(Runnable changed);
}
