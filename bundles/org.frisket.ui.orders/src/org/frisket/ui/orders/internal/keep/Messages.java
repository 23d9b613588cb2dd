package org.frisket.ui.orders.internal.keep;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String BookPlace_name;
	public static String BookPlace_titled;
	public static String BookPlace_toolTip;
	public static String BookWatch_again;
	public static String BookWatch_both;
	public static String BookWatch_compare;
	public static String BookWatch_gone;
	public static String BookWatch_reading;
	public static String BookWatch_restored;
	public static String BookWatch_restoredBoth;
	public static String BookWatch_saveAs;
	public static String BookWatch_somebody;
	public static String BookWatch_take;
	public static String BookWatch_takeRestored;
	public static String BookWatch_taken;
	public static String Meeting_copied;
	public static String Meeting_copyNote;
	public static String Meeting_failed;
	public static String MergeCanvas_spoken;
	public static String MergeDialog_added;
	public static String MergeDialog_apart;
	public static String MergeDialog_asBefore;
	public static String MergeDialog_both;
	public static String MergeDialog_cancel;
	public static String MergeDialog_choseMine;
	public static String MergeDialog_choseTheirs;
	public static String MergeDialog_copy;
	public static String MergeDialog_holds;
	public static String MergeDialog_merge;
	public static String MergeDialog_mine;
	public static String MergeDialog_mineHolds;
	public static String MergeDialog_removed;
	public static String MergeDialog_row;
	public static String MergeDialog_take;
	public static String MergeDialog_theirs;
	public static String MergeDialog_theirsHolds;
	public static String MergeDialog_title;
	public static String MergeDialog_touching;
	public static String MergeDialog_what;
	public static String MergePictures_drawing;
	public static String MergePictures_failed;
	public static String MergePictures_legend;
	public static String MergePictures_nothing;
	public static String MergePictures_waiting;
	public static String TakeInHandler_name;
	public static String TakeInHandler_pictures;
	public static String TakeInHandler_refused;

	static {
		initializeMessages("org.frisket.ui.orders.internal.keep.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
