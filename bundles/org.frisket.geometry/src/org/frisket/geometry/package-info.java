/**
 * Values of the plane: points, line and cubic segments, contours, outlines and regions.
 * <p>
 * Lengths are millimetres, areas square millimetres, angles radians. x points right and y points
 * <em>down</em>, as on a page; a contour that runs counter-clockwise to the viewer therefore has a
 * <em>negative</em> {@linkplain org.frisket.geometry.Contour#signedArea() signed area}. All values are
 * immutable. Nothing here knows Eclipse, and no tolerance is global: each operation is given one.
 */
package org.frisket.geometry;
