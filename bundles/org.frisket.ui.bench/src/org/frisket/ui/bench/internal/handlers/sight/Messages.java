package org.frisket.ui.bench.internal.handlers.sight;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String SightHandler_showAll;
	public static String SightHandler_unlockAll;
	public static String ZoomToHandler_cancel;
	public static String ZoomToHandler_percent;
	public static String ZoomToHandler_show;
	public static String ZoomToHandler_title;
	public static String ZoomToHandler_wrong;

	static {
		initializeMessages("org.frisket.ui.bench.internal.handlers.sight.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
