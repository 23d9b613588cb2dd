package org.frisket.typography.join;

import java.util.Optional;

import org.frisket.geometry.Point;

/**
 * A bar between two letters, or between two parts of one, as somebody wants it.
 *
 * @param one   index in the text of a character of the one letter
 * @param other index of a character of the other; may be the same letter
 * @param width in mm
 * @param ends  where it stands; without them, where the gap is narrowest
 */
public record BridgeWish(int one, int other, double width, Optional<Ends> ends) {

	/**
	 * Each from the pen before its letter, along the letter's baseline and downwards, in cap heights. The bar starts
	 * and ends at the places of the letters' edges that are nearest to them.
	 */
	public record Ends(Point one, Point other) {
	}

	/** @throws IllegalArgumentException unless the width is positive and finite */
	public BridgeWish {
		Bar.requireWidth(width);
	}
}
