package org.frisket.ui.bench.internal.tools;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String MarqueeTracker_enclosed;
	public static String MarqueeTracker_touched;

	static {
		initializeMessages("org.frisket.ui.bench.internal.tools.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
