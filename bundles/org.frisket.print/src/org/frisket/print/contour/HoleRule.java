package org.frisket.print.contour;

/** What becomes of what the art encloses without covering it. */
public enum HoleRule {
	/** Kept where the picture can be seen through there, filled where it only has the colour of what lies behind. */
	AS_TOLD,
	/** Cut out, also where it may be a light spot of the art. */
	KEEP,
	FILL
}
