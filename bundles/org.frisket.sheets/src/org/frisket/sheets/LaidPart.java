package org.frisket.sheets;

import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.model.Placement;

/**
 * A copy of a part as it lies on a sheet.
 *
 * @param place from the frame of the part's job to that of the sheet
 * @param room  what it takes up, in mm from the upper left corner of the sheet
 */
public record LaidPart(Placement placement, SheetPart part, Transform place, Region room) {
}
