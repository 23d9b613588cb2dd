package org.frisket.geometry.clean;

import org.frisket.geometry.Point;

/**
 * Something that was put right.
 *
 * @param amount see {@link Kind}
 */
public record Repair(Kind kind, Point place, double amount) {

	/** What was done, and what the amount means. */
	public enum Kind {
		/** Ends within the tolerance were joined; the gap in mm. */
		CONTOUR_CLOSED,
		/** Ends further apart were left; the gap in mm. */
		CONTOUR_LEFT_OPEN,
		/** A contour that lay exactly on another one was dropped; its length in mm. */
		DUPLICATE_REMOVED,
		/** Contours were cut and joined anew where they met; the number of edges that met there. */
		CROSSING_RESOLVED,
		/** Contours that touched in one place were drawn apart; the distance each moved, in mm. */
		TOUCH_PARTED,
		/** A gap too narrow to tell its two sides apart was filled in one place; the size of the filling, in mm. */
		GAP_FILLED,
		/** A contour too small or too narrow to be cut was dropped; its area in mm². */
		SPECK_REMOVED,
		/** A segment below the tolerance was dropped; its length in mm. */
		SHORT_SEGMENT_REMOVED,
		/** A contour that ran the wrong way was turned round; its area in mm². */
		WINDING_FIXED
	}
}
