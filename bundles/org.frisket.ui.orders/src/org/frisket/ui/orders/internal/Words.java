package org.frisket.ui.orders.internal;

import java.util.Locale;

/** Words that all rooms of the order desk share. */
public final class Words {

	/** Of the button that leaves all as it is. */
	public static final String CANCEL = Messages.Words_cancel;

	/** Of the button of a window that only says something. */
	public static final String CLOSE = Messages.Words_close;

	private Words() {
	}

	/** What stands alone on the screen begins as a sentence. */
	public static String sentence(String reason) {
		return reason.isEmpty() ? reason : reason.substring(0, 1).toUpperCase(Locale.getDefault()) + reason.substring(1);
	}
}
