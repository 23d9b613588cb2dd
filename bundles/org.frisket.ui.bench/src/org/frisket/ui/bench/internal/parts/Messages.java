package org.frisket.ui.bench.internal.parts;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String FindingFlags_measure;
	public static String JobPart_emptySheet;

	static {
		initializeMessages("org.frisket.ui.bench.internal.parts.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
