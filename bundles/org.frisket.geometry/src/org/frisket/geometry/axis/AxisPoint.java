package org.frisket.geometry.axis;

import org.frisket.geometry.Point;

/**
 * A place of a medial axis.
 *
 * @param radius of the largest disc about the place that lies inside the shape, in mm
 */
public record AxisPoint(Point place, double radius) {
}
