/**
 * Curves from dense points, in as few segments as a tolerance allows.
 * <p>
 * The points are first told apart into corners, straight edges and smooth runs by how unevenly they turn
 * ({@code CornerFinder}). Each smooth run is then covered by cubics that reach as far as they can ({@code
 * RunFitter}); a
 * single cubic is fitted by Gauss-Newton steps on its distances from the points at right angles ({@code CubicFit}), so
 * that its error shrinks with the sixth power of its length. {@link org.frisket.geometry.fit.CurveFitter} does this for
 * one run or ring, {@link org.frisket.geometry.fit.RegionFitter} for all contours of a region, which must not come to
 * touch each other by it.
 */
package org.frisket.geometry.fit;
