/**
 * Stroke fonts: letters that are lines for a pen, not outlines to be cut. Their contours are open.
 */
package org.frisket.typography.stroke;
