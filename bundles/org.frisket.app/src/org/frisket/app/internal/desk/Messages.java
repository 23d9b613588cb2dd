package org.frisket.app.internal.desk;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String SideSwitch_bench;
	public static String SideSwitch_benchTip;
	public static String SideSwitch_desk;
	public static String SideSwitch_deskTip;

	static {
		initializeMessages("org.frisket.app.internal.desk.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
