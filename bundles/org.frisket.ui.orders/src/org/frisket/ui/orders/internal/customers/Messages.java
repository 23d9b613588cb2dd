package org.frisket.ui.orders.internal.customers;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String CustomerActions_both;
	public static String CustomerActions_bothMessage;
	public static String CustomerActions_change;
	public static String CustomerActions_create;
	public static String CustomerActions_differs;
	public static String CustomerActions_erase;
	public static String CustomerActions_eraseBackups;
	public static String CustomerActions_eraseButton;
	public static String CustomerActions_eraseGone;
	public static String CustomerActions_eraseMessage;
	public static String CustomerActions_eraseNoUndo;
	public static String CustomerActions_eraseStays;
	public static String CustomerActions_eraseType;
	public static String CustomerActions_erased;
	public static String CustomerActions_erasedBut;
	public static String CustomerActions_export;
	public static String CustomerActions_exported;
	public static String CustomerActions_into;
	public static String CustomerActions_merge;
	public static String CustomerActions_mergeButton;
	public static String CustomerActions_mergeField;
	public static String CustomerActions_mergeJobs;
	public static String CustomerActions_mergeLost;
	public static String CustomerActions_mergeMessage;
	public static String CustomerActions_mergeStep;
	public static String CustomerActions_mergeUndo;
	public static String CustomerActions_mine;
	public static String CustomerActions_newName;
	public static String CustomerActions_notWritten;
	public static String CustomerActions_overtaken;
	public static String CustomerActions_theirs;
	public static String CustomerDesk_reading;
	public static String CustomerField_address;
	public static String CustomerField_agreement;
	public static String CustomerField_contact;
	public static String CustomerField_mail;
	public static String CustomerField_name;
	public static String CustomerField_notes;
	public static String CustomerField_phone;
	public static String CustomersView_alike;
	public static String CustomersView_discard;
	public static String CustomersView_due;
	public static String CustomersView_filter;
	public static String CustomersView_jobs;
	public static String CustomersView_keep;
	public static String CustomersView_name;
	public static String CustomersView_number;
	public static String CustomersView_stage;
	public static String CustomersView_title;
	public static String NameDialog_cancel;
	public static String NameDialog_type;

	static {
		initializeMessages("org.frisket.ui.orders.internal.customers.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
