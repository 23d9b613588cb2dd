package org.frisket.studio;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String StudioException_unusable;
	public static String StudioFolder_inTheWay;
	public static String StudioFolder_newer;
	public static String StudioFolder_noFolder;
	public static String StudioFolder_notMade;
	public static String StudioFolder_notReadable;
	public static String StudioFolder_preferences;
	public static String StudioFolder_readOnly;

	static {
		initializeMessages("org.frisket.studio.messages", Messages.class);
	}

	private Messages() {
	}
}
