package org.frisket.studio.store;

import java.sql.Connection;
import java.sql.SQLException;

/**
 * What is done in one transaction.
 *
 * @param <T> what comes of it
 * @param <X> what else may be wrong; the transaction is then taken back
 */
@FunctionalInterface
public interface Work<T, X extends Exception> {

	/** The connection is lent for the call only, and is neither committed nor closed by it. */
	T on(Connection connection) throws SQLException, X;
}
