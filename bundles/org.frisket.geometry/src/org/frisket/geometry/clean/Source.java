package org.frisket.geometry.clean;

import org.frisket.geometry.Segment;

/**
 * A segment as it came in.
 *
 * @param contour number of the contour it belongs to
 * @param winding what is added to the {@linkplain Winding winding} from its right to its left hand (y up)
 */
record Source(Segment segment, int contour, int winding) {
}
