package org.frisket.orders.desk;

import java.io.Serializable;

/**
 * A line of what is seen of the order book: a job in its group, or the heading of one.
 *
 * @param group  the value that its group has in common; empty without groups
 * @param number of the job; 0 for the heading
 */
public record BookLine(String group, long number) implements Serializable {

	public boolean isHeading() {
		return number == 0;
	}
}
