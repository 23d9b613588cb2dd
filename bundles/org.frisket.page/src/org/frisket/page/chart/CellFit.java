package org.frisket.page.chart;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Transform;

/**
 * How a glyph stands in a cell: in the middle, on a baseline that all cells share, and smaller or off the baseline only
 * as far as it would hang or tower out.
 *
 * @param capital  height of capitals, in the unit of the cells
 * @param baseline from the top of a cell
 */
public record CellFit(double capital, double baseline) {

	/** By how much a glyph is made smaller so that the room holds it: 1 for most, never more. */
	public double reduction(Bounds glyph, Bounds room) {
		return glyph.isEmpty() ? 1
				: Math.min(1, Math.min(room.width() / (capital * glyph.width()),
						room.height() / (capital * glyph.height())));
	}

	/**
	 * From a glyph with capitals 1 high and its origin on the baseline to its place.
	 *
	 * @param room what the glyph may fill
	 * @param top  of the cell
	 */
	public Transform place(Bounds glyph, Bounds room, double top) {
		double scale = capital * reduction(glyph, room);
		double y = Math.min(top + baseline, room.maxY() - scale * glyph.maxY());
		y = Math.max(y, room.minY() - scale * glyph.minY());
		return new Transform(scale, 0, 0, scale, room.centre().x() - scale * glyph.centre().x(), y);
	}
}
