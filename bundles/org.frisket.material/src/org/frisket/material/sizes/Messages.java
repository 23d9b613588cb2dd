package org.frisket.material.sizes;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Formats_noSize;
	public static String Formats_side;

	static {
		initializeMessages("org.frisket.material.sizes.messages", Messages.class);
	}

	private Messages() {
	}
}
