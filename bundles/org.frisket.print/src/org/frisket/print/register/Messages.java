package org.frisket.print.register;

import org.eclipse.osgi.util.NLS;

/** Texts for people. */
final class Messages extends NLS {

	public static String CutMapping_horizon;
	public static String FitChecks_folded;
	public static String FitChecks_foldedCure;
	public static String FitChecks_mirrored;
	public static String FitChecks_mirroredCure;
	public static String FitChecks_mispaired;
	public static String FitChecks_mispairedCure;
	public static String FitChecks_outlier;
	public static String FitChecks_outlierCure;
	public static String FitChecks_unproved;
	public static String FitChecks_unprovedCure;
	public static String MeasuredLengths_disagree;
	public static String MeasuredLengths_disagreeCure;
	public static String MeasuredLengths_few;
	public static String MeasuredLengths_loose;
	public static String MeasuredLengths_short;
	public static String MeasuredLengths_twice;
	public static String MeasuredLengths_unknown;
	public static String PrinterProfile_affine;
	public static String PrinterProfile_name;
	public static String PrinterProfile_slip;
	public static String PrinterProfiles_line;
	public static String PrinterProfiles_taken;
	public static String Registration_counts;
	public static String Registration_few;
	public static String Registration_line;
	public static String Registration_nowhere;
	public static String Registration_same;
	public static String Registration_three;
	public static String Registration_unsettled;

	static {
		initializeMessages("org.frisket.print.register.messages", Messages.class);
	}

	private Messages() {
	}
}
