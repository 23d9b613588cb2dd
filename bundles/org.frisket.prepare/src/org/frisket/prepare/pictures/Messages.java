package org.frisket.prepare.pictures;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {

	public static String PictureFile_nothing;
	public static String PictureFile_tooLarge;
	public static String PictureFile_unknown;

	static {
		initializeMessages("org.frisket.prepare.pictures.messages", Messages.class);
	}

	private Messages() {
	}
}
