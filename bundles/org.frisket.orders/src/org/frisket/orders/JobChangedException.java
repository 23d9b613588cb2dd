package org.frisket.orders;

import org.eclipse.osgi.util.NLS;

/** Somebody else has saved a job since it was looked at; nothing of what was to be saved is kept. */
public final class JobChangedException extends OrderException {

	private static final long serialVersionUID = 1L;

	private final transient Entry now;

	public JobChangedException(Entry now) {
		super(NLS.bind(Messages.JobChanged, new Object[] { now.number(), now.changedBy(), now.changed() }));
		this.now = now;
	}

	/** As it is in the order book now. */
	public Entry now() {
		return now;
	}
}
