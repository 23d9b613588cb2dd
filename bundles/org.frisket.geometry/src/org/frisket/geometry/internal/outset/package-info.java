/**
 * Round offsets made on the curves themselves.
 * <p>
 * The boundary of an offset consists of {@code Rim}s: stretches that keep their distance from a {@code Foot}, which is a
 * segment of the shape or one of its corners. The way of an offset:
 * <ol>
 * <li>{@code Ground}: each contour is walked along once; rims that go on in each other are joined, those that a concave
 * corner pushes across each other are not.
 * <li>{@code Crossings}: where rims cross, found by chords and moved on to the exact place by Newton's method.
 * <li>{@code Trimming}: at a crossing both rims go on inside the other's reach; what is left is asked for its distance
 * from the whole shape ({@code Sources}), and what keeps it is chained.
 * <li>{@code RimCurves}: only now curves are fitted, each to the one rim that it stands for.
 * </ol>
 * A place that is no nearest one at some distance is none farther out, so the rims that an offset keeps are all that a
 * farther one can have. That makes far offsets cheap when near ones are known, and they stay exact since all of them are
 * measured from the shape itself.
 * <p>
 * Where chords, crossings and distances contradict each other nothing is returned. That happens where rims touch or
 * coincide; the caller then goes by polygons.
 */
package org.frisket.geometry.internal.outset;
