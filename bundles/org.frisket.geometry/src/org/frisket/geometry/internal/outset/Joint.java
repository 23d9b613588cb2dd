package org.frisket.geometry.internal.outset;

/** How one rim goes on in the next one along a contour. */
enum Joint {
	/** In the same place and the same direction, at whatever distance. */
	SMOOTH,
	/** In the same place at this distance, where the two cross. */
	CORNER,
	/** Not at all: a concave corner has pushed the two across each other. */
	OPEN
}
