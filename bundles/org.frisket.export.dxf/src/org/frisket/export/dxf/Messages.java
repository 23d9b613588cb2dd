package org.frisket.export.dxf;

import org.eclipse.osgi.util.NLS;

/** What the exporter says, in the user's language. */
final class Messages extends NLS {

	public static String Drawing_tooFar;
	public static String DxfExporter_decimals;
	public static String DxfExporter_margin;
	public static String DxfExporter_tolerance;
	public static String DxfExporter_unit;

	static {
		initializeMessages("org.frisket.export.dxf.messages", Messages.class);
	}

	private Messages() {
	}
}
