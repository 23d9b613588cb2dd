package org.frisket.imports.dxf;

import org.eclipse.osgi.util.NLS;

/** What the importer says, in the user's language. */
final class Messages extends NLS {

	public static String DxfImporter_unit;
	public static String GroupReader_binary;
	public static String GroupReader_brokenOff;
	public static String GroupReader_code;
	public static String GroupReader_empty;
	public static String GroupReader_number;
	public static String DrawingReader_noEntities;
	public static String DrawingReader_noSequenceEnd;
	public static String DrawingReader_tooMany;
	public static String DrawingArt_blockCycle;
	public static String DrawingArt_hiddenLayer;
	public static String DrawingArt_leftOut;
	public static String DrawingArt_noBlock;
	public static String DrawingArt_noUnit;
	public static String DrawingArt_paperSpace;
	public static String DrawingArt_spline;
	public static String DrawingArt_tooDeep;
	public static String DrawingArt_tooMany;
	public static String DrawingArt_unknownUnit;
	public static String place_line;

	static {
		initializeMessages("org.frisket.imports.dxf.messages", Messages.class);
	}

	private Messages() {
	}
}
