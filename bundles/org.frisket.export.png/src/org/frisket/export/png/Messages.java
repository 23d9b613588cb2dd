package org.frisket.export.png;

import org.eclipse.osgi.util.NLS;

/** What the exporter says, in the user's language. */
final class Messages extends NLS {

	public static String Caption_due;
	public static String Caption_job;
	public static String Caption_trouble;
	public static String PngExporter_dpi;
	public static String PngExporter_margin;
	public static String PngExporter_tooMany;

	static {
		initializeMessages("org.frisket.export.png.messages", Messages.class);
	}

	private Messages() {
	}
}
