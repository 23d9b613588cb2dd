package org.frisket.sheets.imposing;

import org.frisket.sheets.SheetPart;

/**
 * Where a copy of a part is to lie.
 *
 * @param job    what placements call its job; null for the host
 * @param copy   which of the copies, from 1
 * @param x      of the centre of its bounds, in mm from the left edge of the sheet; {@code y} from its upper edge
 * @param turn   in degrees, clockwise as seen
 * @param pinned whether it was there before, and stayed
 */
public record PlannedPart(String job, SheetPart part, int copy, double x, double y, double turn, boolean pinned) {
}
