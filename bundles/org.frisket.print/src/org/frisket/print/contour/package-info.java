/**
 * The contour of a picture: what belongs to it, and its edge as smooth curves. {@link
 * org.frisket.print.contour.ContourTracer} goes the whole way. What is handed in and out is in mm; in between lengths are in
 * pixels, with the centre of the first at (0.5, 0.5).
 */
package org.frisket.print.contour;
