package org.frisket.imports.picture;

import org.eclipse.osgi.util.NLS;

/** What the importer says, in the user's language. */
final class Messages extends NLS {

	public static String PageImporter_page;
	public static String PictureImporter_resolution;

	static {
		initializeMessages("org.frisket.imports.picture.messages", Messages.class);
	}

	private Messages() {
	}
}
