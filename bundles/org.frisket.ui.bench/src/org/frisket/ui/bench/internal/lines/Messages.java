package org.frisket.ui.bench.internal.lines;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String LinesDialog_cancel;
	public static String LinesDialog_count;
	public static String LinesDialog_heading;
	public static String LinesDialog_make;
	public static String LinesDialog_message;
	public static String LinesDialog_title;
	public static String LinesDialog_tooMany;

	static {
		initializeMessages("org.frisket.ui.bench.internal.lines.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
