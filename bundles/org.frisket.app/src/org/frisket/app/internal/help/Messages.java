package org.frisket.app.internal.help;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String HelpView_contents;
	public static String HelpView_nothing;
	public static String HelpView_one;
	public static String HelpView_search;
	public static String HelpView_several;

	static {
		initializeMessages("org.frisket.app.internal.help.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
