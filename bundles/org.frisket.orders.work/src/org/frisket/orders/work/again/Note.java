package org.frisket.orders.work.again;

import org.eclipse.osgi.util.NLS;
import org.frisket.prepare.Severity;

/**
 * What is otherwise than it was when a job was made, or what worked then. All texts are for people.
 *
 * @param what it is about
 * @param was  what it was
 * @param is   what it is now
 * @param cure what to do; empty for nothing
 */
public record Note(Severity severity, String what, String was, String is, String cure) {

	/** All of it in a line. */
	public String sentence() {
		String change = is.isEmpty() ? NLS.bind(Messages.Note_was, what, was)
				: NLS.bind(Messages.Note_wasIs, new Object[] { what, was, is });
		return cure.isEmpty() ? change : NLS.bind(Messages.Note_cure, change, cure);
	}
}
