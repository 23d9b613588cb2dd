package org.frisket.orders.compare;

import java.io.IOException;
import java.util.Map;

import org.frisket.model.Job;

/** One job out of what two desks have made of it. */
public final class JobMerge {

	private JobMerge() {
	}

	/**
	 * The job with what was changed on either side. It is sound whatever was chosen: what has nothing left to follow,
	 * and groups of one, are gone as they are after a deletion.
	 *
	 * @param choices whose state holds, by the key of a row that touches; where nothing is said, what is in the order
	 *                book
	 * @return a job of its own
	 * @throws IOException if it could not be copied; the message is for people
	 */
	public static Job of(JobComparison comparison, Map<String, Side> choices) throws IOException {
		Job merged = JobComparison.copy(comparison.theirs());
		Assembly.make(comparison.merging(row -> choices.getOrDefault(row, Side.THEIRS)), merged);
		ApartIds.giveBack(comparison.renamed(), merged);
		return merged;
	}
}
