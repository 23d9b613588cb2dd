package org.frisket.geometry.measure;

import org.frisket.geometry.Point;

/**
 * A part of a region that is thinner than was asked for.
 *
 * @param place in the region, where the part is thinnest
 * @param thickness diameter in mm of the disc that just passes there
 * @param area in mm² of the part
 */
public record ThinPlace(Point place, double thickness, double area) {
}
