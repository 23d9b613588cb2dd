package org.frisket.orders.internal;

import java.sql.SQLException;

import org.eclipse.osgi.util.NLS;

/** A row says something that means nothing here: it is damaged, or comes from a newer Frisket. The message is for people. */
final class Unreadable extends SQLException {

	private static final long serialVersionUID = 1L;

	private Unreadable(Object job, String word) {
		super(NLS.bind(Messages.Unreadable_word, job, word));
	}

	/** @param job what messages call it */
	static <E extends Enum<E>> E value(Class<E> type, String word, Object job) throws Unreadable {
		try {
			return Enum.valueOf(type, word);
		} catch (IllegalArgumentException unknown) {
			throw new Unreadable(job, word);
		}
	}
}
