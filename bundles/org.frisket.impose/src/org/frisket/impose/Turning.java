package org.frisket.impose;

/** How a part may be turned on the sheet. */
public enum Turning {

	/** Not at all. */
	NONE(1),
	/** By half a turn: what grain allows. */
	HALF(2),
	/** By right angles. */
	QUARTER(4),
	/** In steps of 15 degrees. */
	FREE(24);

	private final int steps;

	Turning(int steps) {
		this.steps = steps;
	}

	/** Into how many the full circle is parted. */
	public int steps() {
		return steps;
	}
}
