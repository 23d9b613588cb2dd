package org.frisket.export.machine;

import org.eclipse.osgi.util.NLS;

/** What is said of files for machines, in the user's language. */
final class Messages extends NLS {

	public static String MachineFrame_noPlace;
	public static String MachineFrame_outOfReach;
	public static String MachineFrame_tooFar;
	public static String ToolNumbers_wrong;

	static {
		initializeMessages("org.frisket.export.machine.messages", Messages.class);
	}

	private Messages() {
	}
}
