package org.frisket.studio.store;

import java.io.IOException;
import java.time.Duration;
import java.util.Set;

/**
 * Where a studio keeps its tables: a file of its own, or a server that several desks share. Safe for use by several
 * threads.
 */
public interface Database {

	/**
	 * Opens it for reading and writing. What is missing is made, and the areas are brought up to date.
	 *
	 * @param patience for as long as somebody else is waited for who uses it alone
	 * @throws IOException with a message for people
	 */
	Session open(Set<Area> areas, Duration patience) throws IOException;

	/**
	 * Opens it for looking things up, which works where nothing may be written as well. One that is not there is empty, and
	 * is not made.
	 *
	 * @throws IOException with a message for people
	 */
	Session openForReading(Set<Area> areas, Duration patience) throws IOException;

	/**
	 * Another text after every change, by whichever process and desk; what was looked up is still so while it is the same.
	 * It is cheap to ask for, and waits for nothing.
	 */
	String revision();

	/** Lets go of what is held for whoever uses it next, such as connections. */
	default void end() {
		// most hold nothing
	}
}
