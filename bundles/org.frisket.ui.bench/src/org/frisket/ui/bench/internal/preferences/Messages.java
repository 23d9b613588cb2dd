package org.frisket.ui.bench.internal.preferences;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String BenchPreferencePage_autosave;
	public static String BenchPreferencePage_inches;
	public static String BenchPreferencePage_language;
	public static String BenchPreferencePage_millimetres;
	public static String BenchPreferencePage_unit;

	static {
		initializeMessages("org.frisket.ui.bench.internal.preferences.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
