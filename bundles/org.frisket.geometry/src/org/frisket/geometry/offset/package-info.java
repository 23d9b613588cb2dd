/**
 * Regions grown and shrunk, opened and closed.
 * <p>
 * {@link org.frisket.geometry.offset.Offset} goes from curves to curves. Offsets with round corners are made on the
 * curves themselves, see {@code org.frisket.geometry.internal.outset}. Where that cannot tell what bounds the result, and
 * for all else, it flattens at a share of the tolerance, lets JTS offset the polygons, and fits curves to the result.
 * {@link org.frisket.geometry.offset.PolygonOffset} is the middle step alone, for computations that stay with polygons.
 */
package org.frisket.geometry.offset;
