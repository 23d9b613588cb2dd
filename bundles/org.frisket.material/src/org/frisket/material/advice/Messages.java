package org.frisket.material.advice;

import org.eclipse.osgi.util.NLS;

/** What advice says, in the user's language. */
final class Messages extends NLS {

	public static String Cautions_burns;
	public static String Cautions_change;
	public static String Cautions_dull;
	public static String Cautions_eyes;
	public static String Cautions_fire;
	public static String Cautions_fumes;
	public static String Cautions_hands;
	public static String Cautions_manual;
	public static String Cautions_nearlyDull;
	public static String Cautions_plastic;
	public static String Cautions_stock;
	public static String Confidence_fair;
	public static String Confidence_good;
	public static String Confidence_low;
	public static String Confidence_ruleOfThumb;
	public static String Findings_above;
	public static String Findings_below;
	public static String Findings_closed;
	public static String Findings_leftOut;
	public static String Findings_throughFrom;
	public static String Findings_throughInterval;
	public static String Findings_throughTo;
	public static String Findings_throughUnknown;
	public static String Findings_trials;
	public static String Findings_window;
	public static String Measure_caliper;
	public static String Measure_grammage;
	public static String RulesOfThumb_bulk;
	public static String RulesOfThumb_exposureOver;
	public static String RulesOfThumb_onePassTo;
	public static String RulesOfThumb_startPressure;
	public static String RulesOfThumb_startSpeed;
	public static String RulesOfThumb_twoPassesTo;
	public static String Rules_bulk;
	public static String Rules_exposure;
	public static String Rules_guess;
	public static String Rules_kissExposure;
	public static String Rules_noCaliper;
	public static String Rules_noTrials;
	public static String Rules_own;
	public static String Rules_passes;
	public static String Rules_practice;
	public static String Rules_start;
	public static String SettingsAdvisor_nothingGood;
	public static String Work_cannot;

	static {
		initializeMessages("org.frisket.material.advice.messages", Messages.class);
	}

	private Messages() {
	}
}
