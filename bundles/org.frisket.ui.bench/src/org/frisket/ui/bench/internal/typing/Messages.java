package org.frisket.ui.bench.internal.typing;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Typing_tooLong;

	static {
		initializeMessages("org.frisket.ui.bench.internal.typing.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
