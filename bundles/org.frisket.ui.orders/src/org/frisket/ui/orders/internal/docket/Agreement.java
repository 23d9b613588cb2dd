package org.frisket.ui.orders.internal.docket;

import java.io.IOException;

import org.frisket.orders.OrderException;
import org.frisket.orders.customers.Customers;
import org.frisket.studio.Studio;

/** What was agreed on prices with a customer, in words: a note to whoever quotes, and no rule. */
final class Agreement {

	private Agreement() {
	}

	/** Empty for none. What is not known of a customer is no reason to have no docket. Off the UI thread only. */
	static String with(String customer) throws IOException {
		try {
			return customer.isBlank() ? "" : new Customers(Studio.folder()).find(customer).agreement(); //$NON-NLS-1$
		} catch (OrderException nobodyOfThatName) {
			return ""; //$NON-NLS-1$
		}
	}
}
