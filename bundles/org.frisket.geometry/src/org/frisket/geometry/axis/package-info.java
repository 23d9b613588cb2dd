/**
 * The middle of strokes: the medial axis of a shape, and the lines a hand would draw with one pass of the pen. The way
 * through: {@code VoronoiAxis} finds the axis, {@code StrokePruning} leaves the strokes, {@code Crossings} and
 * {@code Fork} straighten the ways through, {@code StrokeEnds} leads them on to their ends.
 */
package org.frisket.geometry.axis;
