package org.frisket.print.picture;

import org.eclipse.osgi.util.NLS;

/** What is told of pictures, in the user's language. */
final class Messages extends NLS {

	public static String DrawnPicture_deep;
	public static String Magic_other;
	public static String PictureDecoder_damaged;
	public static String PictureDecoder_memory;
	public static String PictureFile_animated;
	public static String PictureFile_animatedWebp;
	public static String PictureFile_assumed;
	public static String PictureFile_brokenOff;
	public static String PictureFile_coarse;
	public static String PictureFile_damaged;
	public static String PictureFile_empty;
	public static String PictureFile_large;
	public static String PictureFile_missing;
	public static String PictureFile_noSize;
	public static String PictureFile_onePage;
	public static String PictureFile_pages;
	public static String PictureFile_profile;
	public static String PictureFile_tooLarge;
	public static String PictureFile_unknown;
	public static String PixelRows_depth;
	public static String WatchedStream_end;

	static {
		initializeMessages("org.frisket.print.picture.messages", Messages.class);
	}

	private Messages() {
	}
}
