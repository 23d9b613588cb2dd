package org.frisket.print.marks;

/** What a register mark looks like. */
public enum MarkKind {

	/** An angle of two strokes from the place on, which open towards the parts. */
	CORNER,
	/** Two strokes that cross at the place. */
	CROSS,
	/** A filled disc round the place. */
	DISC,
	/**
	 * A pole with a pennant, round the place: turned by whatever angle, or mirrored, it never looks the same, so that one of
	 * them shows how a sheet lies.
	 */
	PENNANT
}
