package org.frisket.orders.paper;

import org.eclipse.osgi.util.NLS;

/** What papers say, in the user's language. */
final class Messages extends NLS {

	public static String ColourWords_black;
	public static String ColourWords_blue;
	public static String ColourWords_brown;
	public static String ColourWords_dark;
	public static String ColourWords_green;
	public static String ColourWords_grey;
	public static String ColourWords_light;
	public static String ColourWords_orange;
	public static String ColourWords_pink;
	public static String ColourWords_red;
	public static String ColourWords_teal;
	public static String ColourWords_violet;
	public static String ColourWords_white;
	public static String ColourWords_yellow;
	public static String Docket_all;
	public static String Docket_bench;
	public static String Docket_blocked;
	public static String Docket_customer;
	public static String Docket_due;
	public static String Docket_each;
	public static String Docket_finding;
	public static String Docket_mind;
	public static String Docket_noNumber;
	public static String Docket_notes;
	public static String Docket_nothing;
	public static String Docket_number;
	public static String Docket_parts;
	public static String Docket_places;
	public static String Docket_quantity;
	public static String Docket_sheet;
	public static String Docket_sheetFacts;
	public static String Docket_sheets;
	public static String Docket_signed;
	public static String Docket_size;
	public static String Docket_stage;
	public static String Docket_time;
	public static String Docket_title;
	public static String Docket_unknown;
	public static String Docket_work;
	public static String Docket_workOf;
	public static String JobWork_noStock;
	public static String Proof_approval;
	public static String Proof_check;
	public static String Proof_colours;
	public static String Proof_coloursDiffer;
	public static String Proof_date;
	public static String Proof_name;
	public static String Proof_nothing;
	public static String Proof_scale;
	public static String Proof_signature;
	public static String Proof_title;
	public static String Proof_trueSize;
	public static String StageWords_approved;
	public static String StageWords_cancelled;
	public static String StageWords_cut;
	public static String StageWords_delivered;
	public static String StageWords_designed;
	public static String StageWords_enquiry;
	public static String StageWords_finished;
	public static String StageWords_onHold;
	public static String StageWords_ordered;
	public static String StageWords_printed;

	static {
		initializeMessages("org.frisket.orders.paper.messages", Messages.class);
	}

	private Messages() {
	}
}
