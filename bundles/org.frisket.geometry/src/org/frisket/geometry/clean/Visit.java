package org.frisket.geometry.clean;

import org.frisket.geometry.Point;

/**
 * One step of a boundary: along a half-edge, from a place that is the half-edge's node, or a place beside it where the
 * boundary comes by more than once and its courses must keep apart.
 */
record Visit(int half, Point place, boolean moved) {
}
