package org.frisket.ui.studio;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String StepUndo_noRedo;
	public static String StepUndo_noUndo;
	public static String StepUndo_redo;
	public static String StepUndo_undo;
	public static String StoreWatch_name;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
