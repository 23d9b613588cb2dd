package org.frisket.geometry.repair;

import org.frisket.geometry.Point;

/**
 * One thing that a step put right.
 *
 * @param kind   a word for it in reports for machines, lower case, joined by hyphens, such as {@code contour-closed}
 * @param amount how much, in the unit
 * @param unit   {@code mm}, {@code mm2}, {@code deg}, or empty for a count
 */
public record Mend(String kind, Point place, double amount, String unit) {
}
