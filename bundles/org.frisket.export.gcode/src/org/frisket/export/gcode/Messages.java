package org.frisket.export.gcode;

import org.eclipse.osgi.util.NLS;

/** What the exporter says, in the user's language. */
final class Messages extends NLS {

	public static String GcodeExporter_arcs;
	public static String GcodeExporter_change;
	public static String GcodeExporter_decimals;
	public static String GcodeExporter_down;
	public static String GcodeExporter_dwell;
	public static String GcodeExporter_end;
	public static String GcodeExporter_numbers;
	public static String GcodeExporter_percent;
	public static String GcodeExporter_start;
	public static String GcodeExporter_stop;
	public static String GcodeExporter_tools;
	public static String GcodeExporter_up;
	public static String Words_noSuchPlace;
	public static String Words_notPlain;

	static {
		initializeMessages("org.frisket.export.gcode.messages", Messages.class);
	}

	private Messages() {
	}
}
