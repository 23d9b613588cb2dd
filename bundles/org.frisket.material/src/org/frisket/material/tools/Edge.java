package org.frisket.material.tools;

/**
 * A cutting edge and what it has gone through.
 *
 * @param wornMetres metres of cut, each multiplied with how fast the stock dulls a blade; not below 0
 * @param dullAfter  after how many of those it counts as dull; above 0
 */
public record Edge(double wornMetres, double dullAfter) {

	/** From this share on a warning is due: a long job might not come to its end. */
	private static final double NEARLY = 0.8;

	/** How an edge is. */
	public enum State {
		SHARP, NEARLY_DULL, DULL
	}

	public Edge {
		if (!(wornMetres >= 0) || !(dullAfter > 0) || Double.isInfinite(wornMetres)) {
			throw new IllegalArgumentException("an edge worn " + wornMetres + " m of " + dullAfter + " m");
		}
	}

	/**
	 * The edge after more work.
	 *
	 * @param metres   of cut
	 * @param abrasion how fast the stock dulls a blade, 1 for plain card
	 */
	public Edge after(double metres, double abrasion) {
		if (!(metres >= 0) || !(abrasion >= 0)) {
			throw new IllegalArgumentException(metres + " m of cut in a stock of abrasion " + abrasion);
		}
		return new Edge(wornMetres + metres * abrasion, dullAfter);
	}

	/** From 0 for a new one to 1 for a dull one, and beyond. */
	public double share() {
		return wornMetres / dullAfter;
	}

	public State state() {
		return share() >= 1 ? State.DULL : share() >= NEARLY ? State.NEARLY_DULL : State.SHARP;
	}
}
