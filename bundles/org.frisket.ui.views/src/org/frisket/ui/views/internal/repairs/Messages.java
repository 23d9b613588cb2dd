package org.frisket.ui.views.internal.repairs;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String AmountText_area;
	public static String AmountText_degrees;
	public static String AmountText_length;
	public static String PlanJob_failed;
	public static String PlanJob_name;
	public static String RepairLine_untouched;
	public static String RepairList_amount;
	public static String RepairList_number;
	public static String RepairList_outline;
	public static String RepairList_place;
	public static String RepairList_repair;
	public static String RepairList_step;
	public static String RepairsView_allAway;
	public static String RepairsView_apply;
	public static String RepairsView_applyHint;
	public static String RepairsView_before;
	public static String RepairsView_beforeHint;
	public static String RepairsView_cancel;
	public static String RepairsView_cancelHint;
	public static String RepairsView_correct;
	public static String RepairsView_done;
	public static String RepairsView_doneOne;
	public static String RepairsView_idle;
	public static String RepairsView_idleKey;
	public static String RepairsView_noBench;
	public static String RepairsView_noOutlines;
	public static String RepairsView_nothing;
	public static String RepairsView_oneOutline;
	public static String RepairsView_oneRepair;
	public static String RepairsView_only;
	public static String RepairsView_onlyHint;
	public static String RepairsView_otherSelection;
	public static String RepairsView_outlines;
	public static String RepairsView_recommended;
	public static String RepairsView_recommendedHint;
	public static String RepairsView_repairs;
	public static String RepairsView_selectedOutlines;
	public static String RepairsView_title;
	public static String RepairsView_titleCount;
	public static String RepairsView_working;
	public static String StepsPanel_noOptions;
	public static String StepsPanel_tolerance;

	static {
		initializeMessages("org.frisket.ui.views.internal.repairs.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
