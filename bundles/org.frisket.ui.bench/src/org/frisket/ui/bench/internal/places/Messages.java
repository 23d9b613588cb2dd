package org.frisket.ui.bench.internal.places;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String FerryBanner_narrowMat;
	public static String FerryBanner_title;
	public static String FerryBanner_wideMat;
	public static String FerryBanner_wording;
	public static String FilePlace_cancel;
	public static String FilePlace_changed;
	public static String FilePlace_changedTitle;
	public static String FilePlace_replace;
	public static String FilePlace_saveAs;
	public static String FileWatch_changed;
	public static String FileWatch_changedBoth;
	public static String FileWatch_job;
	public static String FileWatch_keep;
	public static String FileWatch_reload;
	public static String FileWatch_removed;
	public static String FileWatch_saveAgain;
	public static String UntitledPlace_first;
	public static String UntitledPlace_firstLayer;
	public static String UntitledPlace_further;
	public static String UntitledPlace_sample;
	public static String UntitledPlace_toolTip;

	static {
		initializeMessages("org.frisket.ui.bench.internal.places.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
