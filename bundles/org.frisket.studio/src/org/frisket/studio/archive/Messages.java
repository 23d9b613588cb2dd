package org.frisket.studio.archive;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String ArchiveException_unusable;
	public static String Rows_line;
	public static String StudioArchive_bomb;
	public static String StudioArchive_damaged;
	public static String StudioArchive_full;
	public static String StudioArchive_inside;
	public static String StudioArchive_leadsOut;
	public static String StudioArchive_link;
	public static String StudioArchive_newer;
	public static String StudioArchive_noZip;
	public static String StudioArchive_notAllFiles;
	public static String StudioArchive_twice;

	static {
		initializeMessages("org.frisket.studio.archive.messages", Messages.class);
	}

	private Messages() {
	}
}
