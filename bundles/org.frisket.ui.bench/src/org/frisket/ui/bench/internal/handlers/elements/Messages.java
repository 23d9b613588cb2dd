package org.frisket.ui.bench.internal.handlers.elements;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String RepeatForLinesHandler_notYet;
	public static String RepeatForLinesHandler_oneWording;

	static {
		initializeMessages("org.frisket.ui.bench.internal.handlers.elements.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
