package org.frisket.prepare.internal.cures;

import org.eclipse.osgi.util.NLS;

/** What cures and their edits are called, in the user's language. */
final class Messages extends NLS {

	public static String ApartCures_moved;
	public static String ApartCures_onlyCut;
	public static String ApartCures_onlyDraw;
	public static String ApartCures_ownLayer;
	public static String ApartCures_spaced;
	public static String BridgeCures_byRule;
	public static String FontCures_font;
	public static String FontCures_leaveOut;
	public static String FontCures_version;
	public static String LeastSize_height;
	public static String LeastSize_heightAndTouch;
	public static String LeastSize_joined;
	public static String LeastSize_scale;
	public static String LeastSize_smooth;
	public static String MatCures_distance;
	public static String MatCures_outOfRing;
	public static String MatCures_remove;
	public static String OpenContourCures_close;
	public static String OpenContourCures_closed;
	public static String OpenContourCures_draw;
	public static String OutlineCures_blunt;
	public static String OutlineCures_blunted;
	public static String OutlineCures_clean;
	public static String OutlineCures_cleaned;
	public static String OutlineCures_fillHole;
	public static String OutlineCures_fillMat;
	public static String OutlineCures_fillSlits;
	public static String OutlineCures_holeFilled;
	public static String OutlineCures_simpler;
	public static String OutlineCures_simplified;
	public static String OutlineCures_slitsFilled;
	public static String PenCures_draw;
	public static String PictureCures_bleed;
	public static String PictureCures_border;
	public static String PictureCures_edge;
	public static String PictureCures_keep;
	public static String PictureCures_print;
	public static String PictureCures_smaller;
	public static String SizeCures_heavier;
	public static String SizeCures_leaveOut;
	public static String SizeCures_leftOut;
	public static String SizeCures_madeHeavier;
	public static String SizeCures_onSheet;
	public static String StockCures_cut;
	public static String StockCures_draw;
	public static String StockCures_stock;

	static {
		initializeMessages("org.frisket.prepare.internal.cures.messages", Messages.class);
	}

	private Messages() {
	}
}
