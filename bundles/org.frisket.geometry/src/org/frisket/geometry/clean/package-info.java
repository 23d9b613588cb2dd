/**
 * Makes clean {@linkplain org.frisket.geometry.Region regions} from any outlines, and combines regions.
 * <p>
 * Overlays are commonly computed on polylines, and the curves are lost. Here the polyline only finds out <em>what</em>
 * meets what; <em>where</em> it meets is computed on the curves, and the result is put together from the segments that
 * came in. The way of an outline:
 * <ol>
 * <li>{@code Clusters}: contours whose boxes keep apart have nothing to do with each other and are treated apart.
 * <li>{@code SimpleOverlay}: if nothing meets within a cluster, only the nesting of its contours decides what bounds the
 * inside. Most lettering ends here.
 * <li>{@code ArcCutter}: otherwise segments are cut where they turn back in x or y. The box over the ends of such an
 * arc holds all of it, so boxes rule out nearly all pairs without flattening anything ({@code BoxSweep}).
 * <li>{@code ArcNoder}: the remaining pairs are compared chord by chord, halving, and only the corners asked for are
 * worked out; a crossing of chords is moved on
 * to the crossing of the curves ({@code CurveCrossing}). Nodes closer than a small fraction of the tolerance are one
 * ({@code NodeIndex}), which takes the sting out of places that nearly coincide.
 * <li>{@code EdgeCutter}: arcs become edges from node to node; edges that coincide are laid on top of each other, adding
 * up what they wind.
 * <li>{@code Arrangement}: half-edges sorted round their nodes carry the winding number of the face on their left from
 * one place of known winding to all others ({@code WindingProbe}). If the numbers contradict each other, the edges
 * still cross somewhere.
 * <li>{@code BoundaryTracer}, {@code ContourWeaver}: edges with the inside on one side only are chained, and neighbours
 * from the same segment become that segment again, the very object if it is whole. {@code ShortSegments} and
 * {@code Hooks} take out what is below the tolerance.
 * </ol>
 * Nothing of this is trusted. {@code ContactCheck} proves on the curves that the result neither crosses nor touches
 * itself; {@code ScanlineCheck} compares what is inside with the input, by other means. If either objects,
 * {@code Overlay} tries again with finer chords, then with everything that nearly coincides laid together, and at last
 * by snap rounding on a grid, which always succeeds but leaves straight lines; the {@code Attempt}s say with what
 * figures.
 */
package org.frisket.geometry.clean;
