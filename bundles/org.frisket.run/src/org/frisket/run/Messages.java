package org.frisket.run;

import org.eclipse.osgi.util.NLS;

/** What is said of runs, in the user's language. */
final class Messages extends NLS {

	public static String Rate_form;
	public static String RunFindings_edgeCure;
	public static String RunFindings_empty;
	public static String RunFindings_emptyCure;
	public static String RunFindings_far;
	public static String RunFindings_farCure;
	public static String RunFindings_heatCure;
	public static String RunFindings_large;
	public static String RunFindings_largeCure;
	public static String RunFindings_largePlain;
	public static String RunFindings_largeTurn;
	public static String RunFindings_noStock;
	public static String RunFindings_outside;
	public static String RunFindings_outsideBench;
	public static String RunFindings_outsideCure;
	public static String RunFindings_outsidePlain;
	public static String RunFindings_passes;
	public static String RunFindings_passesCure;
	public static String RunFindings_plain;
	public static String RunFindings_plainCure;
	public static String RunFindings_pressure;
	public static String RunFindings_rangeCure;
	public static String RunFindings_short;
	public static String RunFindings_shortCure;
	public static String RunFindings_speed;
	public static String RunFindings_speedCure;
	public static String RunFindings_speedRange;
	public static String RunFindings_stockCure;
	public static String RunFindings_stocks;
	public static String RunFindings_stocksCure;
	public static String RunFindings_toolMissing;
	public static String RunFindings_toolMissingCure;
	public static String RunFindings_toolUsual;
	public static String RunFindings_toolUsualCure;
	public static String RunFindings_unknownStock;
	public static String RunFindings_whole;
	public static String RunFindings_wholeCure;
	public static String RunOptions_direction;
	public static String RunOptions_effort;
	public static String RunOptions_leadIn;
	public static String RunOptions_overcut;
	public static String RunOptions_passes;
	public static String RunOptions_seed;
	public static String RunOptions_shared;
	public static String RunOptions_swing;
	public static String RunOptions_tabWidth;
	public static String RunOptions_tabs;
	public static String RunOptions_tabsFrom;
	public static String RunOptions_tight;
	public static String RunOptions_tightSpeed;

	static {
		initializeMessages("org.frisket.run.messages", Messages.class);
	}

	private Messages() {
	}
}
