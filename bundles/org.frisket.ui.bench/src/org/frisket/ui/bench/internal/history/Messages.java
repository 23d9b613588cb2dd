package org.frisket.ui.bench.internal.history;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String HistoryPopup_advice;
	public static String HistoryPopup_done;
	public static String HistoryPopup_opened;
	public static String HistoryPopup_present;
	public static String HistoryPopup_title;
	public static String HistoryPopup_undone;

	static {
		initializeMessages("org.frisket.ui.bench.internal.history.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
