package org.frisket.impose;

import java.util.Objects;

import org.frisket.geometry.Region;

/**
 * A shape to be laid out.
 *
 * @param id       how the caller knows it
 * @param region   what is cut, in mm
 * @param quantity how many, 1 at least
 * @param turning  what the grain or the picture on it allows
 * @param priority what has the lower number comes on the earlier sheets
 */
public record Part(String id, Region region, int quantity, Turning turning, int priority) {

	/** @throws IllegalArgumentException if there is nothing to lay out */
	public Part {
		Objects.requireNonNull(id);
		Objects.requireNonNull(turning);
		if (region.isEmpty()) {
			throw new IllegalArgumentException("part " + id + " is empty");
		}
		if (quantity < 1) {
			throw new IllegalArgumentException("part " + id + ": quantity " + quantity);
		}
	}

	public Part(String id, Region region) {
		this(id, region, 1, Turning.NONE, 0);
	}
}
