package org.frisket.ui.material.internal.shelf;

import org.eclipse.osgi.util.NLS;

/** How many there are, in one line. */
final class Summary {

	private Summary() {
	}

	static String of(int all, int shown, int low) {
		if (all == 0) {
			return ""; //$NON-NLS-1$
		}
		String text = shown == all ? all == 1 ? Messages.Summary_one : NLS.bind(Messages.Summary_all, all)
				: NLS.bind(Messages.Summary_some, shown, all);
		return low == 0 ? text : NLS.bind(Messages.Summary_low, text, low);
	}
}
