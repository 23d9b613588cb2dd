package org.frisket.ui.orders.internal.book;

import org.eclipse.osgi.util.NLS;
import org.frisket.orders.desk.BookSight;

/** How many jobs are seen, late and selected, in words. */
final class BookSummary {

	private BookSummary() {
	}

	/**
	 * @param all   how many jobs are known
	 * @param whole whether these are all that there are
	 */
	static String of(BookSight sight, int selected, int all, boolean whole) {
		String words = sight.size() == all ? all == 1 ? Messages.BookView_oneJob
				: NLS.bind(Messages.BookView_jobs, count(all))
				: NLS.bind(Messages.BookView_found, count(sight.size()), count(all));
		if (sight.late() > 0) {
			words = NLS.bind(Messages.BookView_late, words, count(sight.late()));
		}
		if (selected > 1) {
			words = NLS.bind(Messages.BookView_selected, words, count(selected));
		}
		return whole ? words : NLS.bind(Messages.BookView_reading, words);
	}

	private static String count(int number) {
		return String.format("%,d", number); //$NON-NLS-1$
	}
}
