package org.frisket.typography.layout;

import java.util.List;

import org.frisket.typography.Letter;

/** Letters on a curve; the other values are those of {@link Laid}. */
public record Bent(List<Letter> letters, List<Integer> overflowing, double needed, double available) {

	public Bent {
		letters = List.copyOf(letters);
		overflowing = List.copyOf(overflowing);
	}
}
