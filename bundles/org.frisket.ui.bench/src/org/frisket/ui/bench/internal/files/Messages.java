package org.frisket.ui.bench.internal.files;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Ago_hours;
	public static String Ago_minutes;
	public static String Ago_now;
	public static String Ago_seconds;
	public static String Autosave_name;
	public static String KeepFontsJob_notKept;

	static {
		initializeMessages("org.frisket.ui.bench.internal.files.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
