package org.frisket.app.internal.appearance;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String AppearancePage_appearance;
	public static String AppearancePage_dark;
	public static String AppearancePage_light;
	public static String AppearancePage_nextStart;
	public static String AppearancePage_system;
	public static String AppearancePage_systemOnly;

	static {
		initializeMessages("org.frisket.app.internal.appearance.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
