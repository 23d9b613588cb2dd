package org.frisket.imports;

import org.eclipse.osgi.util.NLS;

/** What all importers say, in the user's language. */
final class Messages extends NLS {

	public static String LargestFile_packed;
	public static String LargestFile_size;
	public static String WholePicture_page;

	static {
		initializeMessages("org.frisket.imports.messages", Messages.class);
	}

	private Messages() {
	}
}
