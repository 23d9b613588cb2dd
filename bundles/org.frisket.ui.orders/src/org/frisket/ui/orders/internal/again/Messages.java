package org.frisket.ui.orders.internal.again;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String AgainDialog_cancel;
	public static String AgainDialog_due;
	public static String AgainDialog_dueForm;
	public static String AgainDialog_enquiry;
	public static String AgainDialog_job;
	public static String AgainDialog_looking;
	public static String AgainDialog_message;
	public static String AgainDialog_noNumber;
	public static String AgainDialog_notes;
	public static String AgainDialog_nothing;
	public static String AgainDialog_order;
	public static String AgainDialog_ordered;
	public static String AgainDialog_quantity;
	public static String AgainDialog_stage;
	public static String AgainDialog_title;

	static {
		initializeMessages("org.frisket.ui.orders.internal.again.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
