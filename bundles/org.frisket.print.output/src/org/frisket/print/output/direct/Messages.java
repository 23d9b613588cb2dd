package org.frisket.print.output.direct;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String PaperChecks_mark;
	public static String PaperChecks_otherPaper;
	public static String PaperChecks_otherPaperCure;
	public static String PaperChecks_markCure;
	public static String PaperChecks_print;
	public static String PaperChecks_reachCure;
	public static String PaperChecks_size;
	public static String PaperChecks_untold;
	public static String PaperChecks_untoldCure;
	public static String PaperPlace_noPaper;

	static {
		initializeMessages("org.frisket.print.output.direct.messages", Messages.class);
	}

	private Messages() {
	}
}
