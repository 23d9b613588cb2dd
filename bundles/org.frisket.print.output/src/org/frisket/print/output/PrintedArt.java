package org.frisket.print.output;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Region;
import org.frisket.prepare.PreparedPicture;

/**
 * Something printed, on the sheet as seen from the front.
 *
 * @param area    all that is printed of it, bleed and all
 * @param own     without what was added as bleed
 * @param picture whose pixels are printed there; empty for an area in one colour
 * @param page    of the picture's file, from 1
 * @param clipped whether the picture is cut off at the area
 * @param goesOn  whether the colours at the edge of the picture go on to the end of the area
 * @param lines   that are printed besides
 * @param colour  as {@code #rrggbb}, of areas and lines
 */
record PrintedArt(Region area, Region own, Optional<PreparedPicture> picture, int page, boolean clipped,
		boolean goesOn, List<Contour> lines, String colour) {

	Bounds bounds() {
		return lines.stream().map(Contour::bounds).reduce(area.bounds(), Bounds::with);
	}
}
