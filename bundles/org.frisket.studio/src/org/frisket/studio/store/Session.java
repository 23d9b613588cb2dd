package org.frisket.studio.store;

/** A database that is open for a piece of work. Safe for use by several threads. */
public interface Session extends AutoCloseable {

	/**
	 * Does a work in one transaction. It may be called again from its beginning if the change of somebody else came
	 * between, so it leaves no traces but in the database.
	 *
	 * @param keep whether what it changed is kept if it ends well; otherwise it only looks something up
	 * @throws StoreException if the database fails
	 */
	<T, X extends Exception> T transaction(Work<T, X> work, boolean keep) throws StoreException, X;

	@Override
	void close() throws StoreException;
}
