package org.frisket.orders.customers;

import java.util.Locale;

/** What is kept of a customer. */
public enum CustomerField {

	NAME(200), CONTACT(200), MAIL(320), PHONE(100), ADDRESS(1000), AGREEMENT(1000), NOTES(4000);

	private final int longest;

	CustomerField(int longest) {
		this.longest = longest;
	}

	/** In characters. */
	public int longest() {
		return longest;
	}

	/** On the command line and in files. */
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}
}
