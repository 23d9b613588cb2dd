package org.frisket.prepare.repair;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {

	public static String RepairPlan_beyond;
	public static String RepairPlan_edit;
	public static String RepairPlan_editOne;
	public static String RepairPlan_unmeasured;
	public static String RepairPlan_within;
	public static String RepairPlanner_flat;
	public static String RepairPlanner_nothingLeft;
	public static String RepairPlanner_unreadable;
	public static String RepairWords_contourClosed;
	public static String RepairWords_contourLeftOpen;
	public static String RepairWords_crossingResolved;
	public static String RepairWords_curveSimplified;
	public static String RepairWords_doubledLineRemoved;
	public static String RepairWords_duplicateRemoved;
	public static String RepairWords_endsJoined;
	public static String RepairWords_gapFilled;
	public static String RepairWords_gapHealed;
	public static String RepairWords_linesLevelled;
	public static String RepairWords_shortLineRemoved;
	public static String RepairWords_shortSegmentRemoved;
	public static String RepairWords_sliverRemoved;
	public static String RepairWords_speckRemoved;
	public static String RepairWords_spikeRemoved;
	public static String RepairWords_touchParted;
	public static String RepairWords_windingFixed;

	static {
		initializeMessages("org.frisket.prepare.repair.messages", Messages.class);
	}

	private Messages() {
	}
}
