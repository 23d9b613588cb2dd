package org.frisket.orders.exchange;

import org.frisket.geometry.Outline;

/**
 * Something that is cut.
 *
 * @param name    for people
 * @param cut     how
 * @param outline along which, in mm in the frame of the job, y down
 */
public record TicketPart(String name, Cut cut, Outline outline) {

	/** How it is cut, as XJDF tells cuts apart. */
	public enum Cut {
		/** Through. */
		CUT("Cut", "Full"),
		/** Not through what carries it. */
		KISS_CUT("Cut", "Partial"),
		/** Through, with bridges. */
		PERFORATE("Perforate", "Full");

		private final String type;
		private final String depth;

		Cut(String type, String depth) {
			this.type = type;
			this.depth = depth;
		}

		String type() {
			return type;
		}

		String depth() {
			return depth;
		}
	}
}
