package org.frisket.export.pdf;

import org.eclipse.osgi.util.NLS;

/** What the exporter says, in the user's language. */
final class Messages extends NLS {

	public static String Label_due;
	public static String Label_job;
	public static String Label_size;
	public static String PdfExporter_artwork;
	public static String PdfExporter_label;
	public static String PdfExporter_lineWidth;
	public static String PdfExporter_margin;
	public static String PdfFile_layers;
	public static String PdfFile_subject;
	public static String Step_artwork;
	public static String Step_crease;
	public static String Step_cut;
	public static String Step_draw;
	public static String Step_kissCut;
	public static String Step_label;
	public static String Step_perforate;

	static {
		initializeMessages("org.frisket.export.pdf.messages", Messages.class);
	}

	private Messages() {
	}
}
