package org.frisket.ui.orders.internal.exchange;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Arrivals_jobs;
	public static String Arrivals_kinds;
	public static String Arrivals_one;
	public static String Arrivals_pictures;
	public static String Arrivals_refused;
	public static String Arrivals_several;
	public static String FieldWords_customer;
	public static String FieldWords_dmy;
	public static String FieldWords_due;
	public static String FieldWords_iso;
	public static String FieldWords_mdy;
	public static String FieldWords_notes;
	public static String FieldWords_quantity;
	public static String FieldWords_reference;
	public static String FieldWords_title;
	public static String HandOutHandler_nothing;
	public static String HandOut_cancelled;
	public static String HandOut_failed;
	public static String HandOut_folder;
	public static String HandOut_job;
	public static String HandOut_jobFile;
	public static String HandOut_there;
	public static String HandOut_ticket;
	public static String HandOut_ticketFile;
	public static String HandOut_written;
	public static String HandOut_writtenAll;
	public static String ImportHandler_all;
	public static String ImportHandler_jobs;
	public static String ImportHandler_tables;
	public static String ImportHandler_title;
	public static String IntakeColumns_anyDate;
	public static String IntakeColumns_dates;
	public static String IntakeColumns_none;
	public static String IntakeDialog_file;
	public static String IntakeDialog_guess;
	public static String IntakeDialog_known;
	public static String IntakeDialog_noName;
	public static String IntakeDialog_notRemembered;
	public static String IntakeDialog_reading;
	public static String IntakeDialog_ready;
	public static String IntakeDialog_recall;
	public static String IntakeDialog_remember;
	public static String IntakeDialog_rememberHint;
	public static String IntakeDialog_skip;
	public static String IntakeDialog_take;
	public static String IntakeDialog_taken;
	public static String IntakeDialog_taking;
	public static String IntakeDialog_title;
	public static String IntakeDialog_wrong;
	public static String IntakeReader_reading;
	public static String IntakeRun_cancelled;
	public static String IntakeRun_name;
	public static String IntakeTables_column;
	public static String IntakeTables_first;
	public static String IntakeTables_nothingWrong;
	public static String IntakeTables_problems;
	public static String IntakeTables_reason;
	public static String IntakeTables_row;
	public static String IntakeTables_rows;
	public static String IntakeTables_wrong;

	static {
		initializeMessages("org.frisket.ui.orders.internal.exchange.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
