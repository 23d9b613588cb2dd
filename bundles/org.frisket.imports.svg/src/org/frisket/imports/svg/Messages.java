package org.frisket.imports.svg;

import org.eclipse.osgi.util.NLS;

/** What the importer says, in the user's language. */
final class Messages extends NLS {

	public static String SvgImporter_as;
	public static String SvgImporter_pixels;
	public static String SvgImporter_strokes;
	public static String TreeReader_deep;
	public static String TreeReader_many;
	public static String TreeReader_noRoot;
	public static String TreeReader_xml;
	public static String Addresses_noPath;
	public static String Addresses_noTarget;
	public static String Addresses_remote;
	public static String Budget_elements;
	public static String Budget_nodes;
	public static String Budget_pathData;
	public static String Cascade_selector;
	public static String Cascade_sheet;
	public static String Walk_cycle;
	public static String Walk_layer;
	public static String Walk_leftOut;
	public static String Walk_quantity;
	public static String Walk_shapes;
	public static String ShapeOutlines_number;
	public static String ShapeOutlines_path;
	public static String Clipping_line;
	public static String StrokeOutline_dashes;
	public static String PictureReader_data;
	public static String PictureReader_vector;
	public static String TextOutlines_font;
	public static String TextOutlines_glyph;
	public static String TextOutlines_stretch;
	public static String place_line;

	static {
		initializeMessages("org.frisket.imports.svg.messages", Messages.class);
	}

	private Messages() {
	}
}
