/** The contour of a picture: what belongs to it, and its edge as smooth curves. */
package org.frisket.print.contour;
