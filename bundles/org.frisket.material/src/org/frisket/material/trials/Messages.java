package org.frisket.material.trials;

import org.eclipse.osgi.util.NLS;

/** What is said of trials, in the user's language. */
final class Messages extends NLS {

	public static String BladeWear_dull;
	public static String BladeWear_nearlyDull;
	public static String BladeWear_within;
	public static String Reorder_otherStock;
	public static String Reorder_sameJob;
	public static String Reorder_sameStock;
	public static String Reorder_since;
	public static String SheetLayout_size;
	public static String Sweep_count;
	public static String Sweep_form;
	public static String Sweep_passes;
	public static String Sweep_twice;
	public static String TestSheetJob_layer;
	public static String TestSheetJob_title;
	public static String TestSheetJob_tooLarge;
	public static String TestSheet_noCell;
	public static String TestSheet_same;
	public static String TestSheet_scale;
	public static String VerdictChart_advised;
	public static String VerdictChart_untried;
	public static String Verdict_carrierCut;
	public static String Verdict_cornersLifted;
	public static String Verdict_notThrough;
	public static String Verdict_through;
	public static String Verdict_torn;

	static {
		initializeMessages("org.frisket.material.trials.messages", Messages.class);
	}

	private Messages() {
	}
}
