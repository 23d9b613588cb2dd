package org.frisket.ui.bench.internal.handlers.jobs;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String CureHandler_byHand;
	public static String CureHandler_none;
	public static String CureHandler_soon;
	public static String ImportHandler_artFiles;
	public static String ImportHandler_title;
	public static String OpenJobHandler_allFiles;
	public static String OpenJobHandler_jobFiles;
	public static String OpenJobHandler_title;
	public static String RedoHandler_named;
	public static String RedoHandler_nothing;
	public static String UndoHandler_named;
	public static String UndoHandler_nothing;

	static {
		initializeMessages("org.frisket.ui.bench.internal.handlers.jobs.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
