package org.frisket.run.paper;

import org.eclipse.osgi.util.NLS;

/** What the run sheet says, in the user's language. */
final class Messages extends NLS {

	public static String LegText_blade;
	public static String LegText_byRules;
	public static String LegText_byRun;
	public static String LegText_byTrials;
	public static String LegText_change;
	public static String LegText_crease;
	public static String LegText_creasingWheel;
	public static String LegText_cut;
	public static String LegText_draw;
	public static String LegText_exposure;
	public static String LegText_first;
	public static String LegText_head;
	public static String LegText_kissCut;
	public static String LegText_onePass;
	public static String LegText_passes;
	public static String LegText_pen;
	public static String LegText_perforate;
	public static String LegText_perforatingBlade;
	public static String LegText_pressure;
	public static String LegText_setAnew;
	public static String LegText_speed;
	public static String LegText_strokes;
	public static String RunSheet_area;
	public static String RunSheet_bench;
	public static String RunSheet_blocked;
	public static String RunSheet_customer;
	public static String RunSheet_due;
	public static String RunSheet_edge;
	public static String RunSheet_grammage;
	public static String RunSheet_job;
	public static String RunSheet_lifts;
	public static String RunSheet_machine;
	public static String RunSheet_material;
	public static String RunSheet_metres;
	public static String RunSheet_mind;
	public static String RunSheet_noMachine;
	public static String RunSheet_nothing;
	public static String RunSheet_order;
	public static String RunSheet_reason;
	public static String RunSheet_shareArea;
	public static String RunSheet_shareJob;
	public static String RunSheet_shares;
	public static String RunSheet_sheet;
	public static String RunSheet_signCounted;
	public static String RunSheet_signDone;
	public static String RunSheet_signSetUp;
	public static String RunSheet_signTest;
	public static String RunSheet_signed;
	public static String RunSheet_size;
	public static String RunSheet_stock;
	public static String RunSheet_stop;
	public static String RunSheet_stops;
	public static String RunSheet_stopsOf;
	public static String RunSheet_strokes;
	public static String RunSheet_time;
	public static String RunSheet_timePrice;
	public static String RunSheet_title;
	public static String RunSheet_total;
	public static String RunSheet_totals;
	public static String RunSheet_travel;
	public static String RunSheet_unknown;
	public static String SheetPicture_start;
	public static String Warnings_finding;

	static {
		initializeMessages("org.frisket.run.paper.messages", Messages.class);
	}

	private Messages() {
	}
}
