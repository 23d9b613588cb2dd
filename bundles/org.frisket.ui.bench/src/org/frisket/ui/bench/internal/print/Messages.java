package org.frisket.ui.bench.internal.print;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String PageCaption_bar;
	public static String PageCaption_heading;
	public static String PageCaption_page;
	public static String PageCaption_scale;
	public static String PageCaption_trueSize;
	public static String PageCaption_unit;
	public static String PrintPreview_a4;
	public static String PrintPreview_back;
	public static String PrintPreview_close;
	public static String PrintPreview_direction;
	public static String PrintPreview_empty;
	public static String PrintPreview_fit;
	public static String PrintPreview_letter;
	public static String PrintPreview_look;
	public static String PrintPreview_lying;
	public static String PrintPreview_on;
	public static String PrintPreview_page;
	public static String PrintPreview_paper;
	public static String PrintPreview_print;
	public static String PrintPreview_size;
	public static String PrintPreview_title;
	public static String PrintPreview_tooMany;
	public static String PrintPreview_trueSize;
	public static String PrintPreview_upright;
	public static String PrintRun_done;
	public static String PrintRun_otherPaper;
	public static String PrintRun_page;
	public static String PrintRun_refused;

	static {
		initializeMessages("org.frisket.ui.bench.internal.print.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
