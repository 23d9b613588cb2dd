package org.frisket.cli.line;

/** Exit statuses. */
public final class Status {

	/** Done. */
	public static final int DONE = 0;
	/** Done, but blocking findings remain. */
	public static final int BLOCKED = 1;
	/** Wrong use or unreadable input; nothing was written. */
	public static final int REFUSED = 2;

	private Status() {
	}
}
