package org.frisket.print.output;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String JobPrints_measureAgain;
	public static String PixelArt_cure;
	public static String PixelArt_shapes;
	public static String PrintAndCut_back;
	public static String PrintAndCut_backCure;
	public static String PrintAndCut_nothing;
	public static String PrintAndCut_nothingCure;
	public static String PrintContent_code;
	public static String PrintContent_marks;
	public static String PrintContent_ruler;
	public static String PrintFile_asDesigned;
	public static String PrintFile_jobSheet;
	public static String PrintFile_sheet;
	public static String PrintFile_undone;
	public static String PrintOptions_bleed;
	public static String PrintSheet_marksCure;
	public static String PrintSheet_noNumber;
	public static String PrintSheet_noNumberCure;
	public static String PrintSheet_noRuler;
	public static String PrintSheet_nothing;
	public static String PrintSheet_nothingCure;
	public static String PrintSheet_roomCure;
	public static String PrintSheet_short;
	public static String PrintSheet_shortCure;
	public static String SheetFaces_small;
	public static String SheetFaces_smallCure;
	public static String SheetMarks_noMark;
	public static String WholeSet_folder;
	public static String WholeSet_notBrought;

	static {
		initializeMessages("org.frisket.print.output.messages", Messages.class);
	}

	private Messages() {
	}
}
