package org.frisket.orders.customers;

import org.eclipse.osgi.util.NLS;
import org.frisket.orders.OrderException;

/** Somebody else has changed a customer since; nothing of what was to be kept is kept. */
public final class CustomerChangedException extends OrderException {

	private static final long serialVersionUID = 1L;

	private final transient Customer now;

	CustomerChangedException(Customer now) {
		super(NLS.bind(Messages.CustomerChanged, now.name(), now.changed()));
		this.now = now;
	}

	/** As it is kept now. */
	public Customer now() {
		return now;
	}
}
