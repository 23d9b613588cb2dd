package org.frisket.ui.bench.internal.grips;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String ArcTracker_reading;
	public static String PathTracker_reading;
	public static String TurnTracker_degrees;

	static {
		initializeMessages("org.frisket.ui.bench.internal.grips.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
