package org.frisket.orders.work.again;

import java.util.List;

import org.frisket.orders.Entry;

/**
 * A job that is made again.
 *
 * @param original as it stands in the order book
 * @param order    the new one
 * @param notes    what is otherwise than it was, the gravest first
 */
public record Repeat(Entry original, Entry order, List<Note> notes) {

	public Repeat {
		notes = List.copyOf(notes);
	}
}
