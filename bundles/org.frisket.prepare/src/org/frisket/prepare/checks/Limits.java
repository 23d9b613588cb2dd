package org.frisket.prepare.checks;

/**
 * What stock and tool allow, in mm.
 *
 * @param thinnestStroke the narrowest part that is to survive the blade
 * @param smallestPiece  the least length of a piece that can still be held and picked
 */
public record Limits(double thinnestStroke, double smallestPiece) {

	/** Strokes of 1 mm, pieces of 2 mm: common practice for card, no source. */
	public static final Limits CARD = new Limits(1, 2);

	/** @throws IllegalArgumentException unless both are positive and finite */
	public Limits {
		require("thinnest stroke", thinnestStroke);
		require("smallest piece", smallestPiece);
	}

	private static void require(String name, double value) {
		if (!(value > 0) || !Double.isFinite(value)) {
			throw new IllegalArgumentException(name + " must be a positive length, got " + value);
		}
	}

	public Limits withThinnestStroke(double mm) {
		return new Limits(mm, smallestPiece);
	}

	public Limits withSmallestPiece(double mm) {
		return new Limits(thinnestStroke, mm);
	}
}
