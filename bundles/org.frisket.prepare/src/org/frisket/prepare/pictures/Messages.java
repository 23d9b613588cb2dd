package org.frisket.prepare.pictures;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {

	public static String LinkedPictures_left;
	public static String LinkedPictures_room;
	public static String PictureFile_nothing;
	public static String PictureSource_missing;
	public static String PictureSource_noFile;
	public static String PictureSource_tooLarge;

	static {
		initializeMessages("org.frisket.prepare.pictures.messages", Messages.class);
	}

	private Messages() {
	}
}
