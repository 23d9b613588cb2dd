package org.frisket.ui.material.internal;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String StudioShelf_name;
	public static String StudioShelf_reading;

	static {
		NLS.initializeMessages("org.frisket.ui.material.internal.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
