package org.frisket.ui.bench.internal.letters;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String LetterDrag_degrees;
	public static String LetterDrag_percent;
	public static String LetterMode_flat;

	static {
		initializeMessages("org.frisket.ui.bench.internal.letters.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
