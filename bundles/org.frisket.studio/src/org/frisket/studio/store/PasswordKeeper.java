package org.frisket.studio.store;

import java.util.Optional;

/**
 * Keeps passwords of databases for those who use this machine. Contributed to the extension point
 * {@code org.frisket.orders.stores}; it has a constructor without arguments and is safe for use by several threads.
 */
public interface PasswordKeeper {

	/** The password for an address; empty if none is kept. Called whenever somebody connects, and may ask people. */
	Optional<String> password(String address);
}
