package org.frisket.ui.print.internal.marks;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String FitPanel_error;
	public static String FitPanel_fit;
	public static String FitPanel_keep;
	public static String FitPanel_manage;
	public static String FitPanel_noPrinter;
	public static String FitPanel_part;
	public static String FitPanel_printer;
	public static String FitWords_affine;
	public static String FitWords_below;
	public static String FitWords_close;
	public static String FitWords_copy;
	public static String FitWords_count;
	public static String FitWords_error;
	public static String FitWords_followed;
	public static String FitWords_none;
	public static String FitWords_noneToSpare;
	public static String FitWords_notFollowed;
	public static String FitWords_oneToSpare;
	public static String FitWords_projective;
	public static String FitWords_rigid;
	public static String FitWords_rms;
	public static String FitWords_scale;
	public static String FitWords_scales;
	public static String FitWords_shift;
	public static String FitWords_similarity;
	public static String FitWords_skew;
	public static String FitWords_toSpare;
	public static String FitWords_turnedLeft;
	public static String FitWords_turnedRight;
	public static String LengthsGrid_agree;
	public static String LengthsGrid_between;
	public static String LengthsGrid_designed;
	public static String LengthsGrid_enough;
	public static String LengthsGrid_how;
	public static String LengthsGrid_measured;
	public static String LengthsGrid_nowhere;
	public static String LengthsGrid_pair;
	public static String LengthsGrid_take;
	public static String MarksActions_allFiles;
	public static String MarksActions_dpiDoubtful;
	public static String MarksActions_dpiUnsaid;
	public static String MarksActions_dpiUnsound;
	public static String MarksActions_keep;
	public static String MarksActions_keepWords;
	public static String MarksActions_notTaken;
	public static String MarksActions_pictures;
	public static String MarksActions_printer;
	public static String MarksActions_scan;
	public static String MarksActions_taken;
	public static String MarksPage_back;
	public static String MarksPage_front;
	public static String MarksPage_lengths;
	public static String MarksPage_place;
	public static String MarksPage_places;
	public static String MarksPage_scan;
	public static String MarksPage_scanShown;
	public static String MarksPage_scanning;
	public static String MarksPage_stop;
	public static String MarksPainter_arrows;
	public static String MarksPainter_caption;
	public static String MarksPainter_rings;
	public static String MarksPainter_symmetric;
	public static String MarksPainter_unlike;
	public static String MarksView_noBench;
	public static String MarksView_noMarks;
	public static String MarksView_noMarksToFind;
	public static String MarksView_noSheet;
	public static String Notices_finding;
	public static String Notices_placed;
	public static String PlaceMarksDialog_cancel;
	public static String PlaceMarksDialog_corner;
	public static String PlaceMarksDialog_count;
	public static String PlaceMarksDialog_cross;
	public static String PlaceMarksDialog_disc;
	public static String PlaceMarksDialog_heading;
	public static String PlaceMarksDialog_kind;
	public static String PlaceMarksDialog_margin;
	public static String PlaceMarksDialog_message;
	public static String PlaceMarksDialog_pennant;
	public static String PlaceMarksDialog_place;
	public static String PlaceMarksDialog_problem;
	public static String PlaceMarksDialog_quiet;
	public static String PlaceMarksDialog_size;
	public static String PlaceMarksDialog_title;
	public static String PlaceMarksDialog_weight;
	public static String PlacesGrid_designed;
	public static String PlacesGrid_mark;
	public static String PlacesGrid_off;
	public static String PlacesGrid_problem;
	public static String PlacesGrid_x;
	public static String PlacesGrid_xOf;
	public static String PlacesGrid_y;
	public static String PlacesGrid_yOf;
	public static String ReadParts_failed;
	public static String ReadParts_name;
	public static String ScanRun_failed;
	public static String ScanRun_name;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
