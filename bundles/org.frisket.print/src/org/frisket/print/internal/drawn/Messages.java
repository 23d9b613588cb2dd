package org.frisket.print.internal.drawn;

import org.eclipse.osgi.util.NLS;

/** What is told of art that is drawn, in the user's language. */
final class Messages extends NLS {

	public static String DrawnArt_size;
	public static String PdfArt_brokenOff;
	public static String PdfArt_damaged;
	public static String PdfArt_encrypted;
	public static String PdfArt_page;
	public static String PdfScan_fonts;
	public static String PdfScan_notes;
	public static String PdfScan_pages;
	public static String PdfScan_pictures;
	public static String SvgArt_damaged;
	public static String SvgArt_foreign;
	public static String SvgArt_moving;
	public static String SvgArt_outside;
	public static String SvgArt_pictures;
	public static String SvgArt_refused;
	public static String SvgArt_size;
	public static String SvgArt_text;
	public static String SvgScan_deep;
	public static String SvgScan_entity;
	public static String SvgScan_many;
	public static String SvgScan_root;
	public static String SvgScan_xml;
	public static String WatchedDrawer_picture;
	public static String Work_endless;

	static {
		initializeMessages("org.frisket.print.internal.drawn.messages", Messages.class);
	}

	private Messages() {
	}
}
