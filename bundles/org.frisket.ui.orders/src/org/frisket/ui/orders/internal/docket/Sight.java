package org.frisket.ui.orders.internal.docket;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.ImageData;
import org.frisket.model.StageChange;
import org.frisket.orders.Entry;
import org.frisket.orders.Paper;
import org.frisket.orders.paper.DocketFacts;

/**
 * What is known of a job for its docket; it comes in parts, the quick ones first.
 *
 * @param agreement on prices with its customer, in words; empty for none
 * @param facts     empty while its document is still worked through
 * @param picture   of it; empty if there is nothing to see, or not yet
 * @param whole     whether sheets, time and cautions are among the facts
 * @param trouble   why something of it is missing; empty if nothing is
 */
record Sight(Entry entry, List<StageChange> history, List<Paper> papers, String agreement, Optional<DocketFacts> facts,
		Optional<Picture> picture, boolean whole, String trouble) {

	/**
	 * A picture with the bar by which lengths can be read off it.
	 *
	 * @param bar  its length, in pixels of the screen
	 * @param text how long it is, and the scale
	 */
	record Picture(ImageData data, int density, int bar, String text) {
	}

	/** Nothing but what the order book's list says. */
	static Sight of(Entry entry) {
		return new Sight(entry, List.of(), List.of(), "", Optional.empty(), Optional.empty(), false, ""); //$NON-NLS-1$
	}

	Sight with(DocketFacts found, Optional<Picture> seen, boolean all) {
		return new Sight(entry, history, papers, agreement, Optional.of(found), seen, all, trouble);
	}

	Sight because(String reason) {
		return new Sight(entry, history, papers, agreement, facts, picture, true, reason);
	}
}
