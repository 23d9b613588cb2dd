package org.frisket.geometry.offset;

/** Whether an offset keeps the holes of a region, and those that arise where parts merge. */
public enum Holes {
	KEEP, FILL
}
