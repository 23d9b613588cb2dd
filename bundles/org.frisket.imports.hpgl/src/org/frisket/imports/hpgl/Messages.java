package org.frisket.imports.hpgl;

import org.eclipse.osgi.util.NLS;

/** What the importer says, in the user's language. */
final class Messages extends NLS {

	public static String HpglImporter_step;
	public static String InstructionReader_number;
	public static String Plotter_layer;
	public static String Plotter_leftOut;
	public static String Plotter_nothing;
	public static String Plotter_parameters;
	public static String Plotter_scale;
	public static String Plotter_tooMany;
	public static String place_byte;

	static {
		initializeMessages("org.frisket.imports.hpgl.messages", Messages.class);
	}

	private Messages() {
	}
}
