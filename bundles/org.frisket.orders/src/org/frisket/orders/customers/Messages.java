package org.frisket.orders.customers;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String CustomerChanged;
	public static String Customer_noName;
	public static String Customer_tooLong;
	public static String Customers_hasJobs;
	public static String Customers_itself;
	public static String Customers_none;
	public static String Customers_taken;
	public static String Eraser_name;

	static {
		initializeMessages("org.frisket.orders.customers.messages", Messages.class);
	}

	private Messages() {
	}
}
