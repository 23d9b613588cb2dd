package org.frisket.studio.store;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Knows the databases of one kind by their addresses. Contributed to the extension point
 * {@code org.frisket.orders.stores} with the beginning of its addresses, such as {@code jdbc:postgresql:}; it has a
 * constructor without arguments.
 */
public interface DatabaseKind {

	/**
	 * The database at an address; nothing is connected to yet.
	 *
	 * @param password that somebody has kept for the address; asked when it is needed
	 * @throws IOException if the address is none, with a message for people
	 */
	Database at(String address, Supplier<Optional<String>> password) throws IOException;
}
