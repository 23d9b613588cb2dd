package org.frisket.print.register;

/** What a sheet may have done between its design and its measure, each more than the one before. */
public enum FitKind {

	/** Moved and turned. */
	RIGID(3, 2),
	/** Also scaled, the same both ways. */
	SIMILARITY(4, 2),
	/** Also scaled differently in two directions, and skewed. */
	AFFINE(6, 3),
	/** Also seen from aslant, as in a photograph. */
	PROJECTIVE(8, 4);

	private final int parameters;
	private final int leastMarks;

	FitKind(int parameters, int leastMarks) {
		this.parameters = parameters;
		this.leastMarks = leastMarks;
	}

	/** How many numbers describe it. */
	public int parameters() {
		return parameters;
	}

	/** So many marks settle it, with none left over to check it by. */
	public int leastMarks() {
		return leastMarks;
	}

	/** Coordinates measured beyond those that the fit itself takes up. */
	public int redundancy(int marks) {
		return 2 * marks - parameters;
	}
}
