package org.frisket.export.svg;

import org.eclipse.osgi.util.NLS;

/** What the exporter says, in the user's language. */
final class Messages extends NLS {

	public static String SvgExporter_decimals;
	public static String SvgExporter_fill;
	public static String SvgExporter_margin;

	static {
		initializeMessages("org.frisket.export.svg.messages", Messages.class);
	}

	private Messages() {
	}
}
