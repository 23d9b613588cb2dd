package org.frisket.typography.face;

/** Where the cap height of a face was taken from, the most trustworthy first. */
public enum CapHeightOrigin {

	/** Height of the outline of the glyph for H. */
	LETTER_H,

	/** Height of the outline of another capital with flat ends: E, I, T, Z, N, M. */
	OTHER_CAPITAL,

	/** The font's own claim, {@code sCapHeight} of table OS/2; it is sometimes wrong. */
	HEADER,

	/** Nothing to go by: seven tenths of the em. */
	GUESS
}
