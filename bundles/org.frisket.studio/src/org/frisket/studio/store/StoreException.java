package org.frisket.studio.store;

import java.io.IOException;

import org.eclipse.osgi.util.NLS;

/** The store cannot be used; the message names its file and says why. */
public final class StoreException extends IOException {

	private static final long serialVersionUID = 1L;

	private final String reason;

	StoreException(Object place, String reason) {
		this(place, reason, null);
	}

	StoreException(Object place, String reason, Exception cause) {
		super(NLS.bind(Messages.StoreException_unusable, place, reason), cause);
		this.reason = reason;
	}

	/** Why, without the file's name. */
	public String reason() {
		return reason;
	}
}
