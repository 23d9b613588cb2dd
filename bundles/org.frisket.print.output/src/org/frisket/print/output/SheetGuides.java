package org.frisket.print.output;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.Picture;
import org.frisket.sheets.LaidPart;

/**
 * Lines to look at that are neither printed nor cut, in mm on the sheet.
 *
 * @param safe    within which a part keeps its art and its words whole, though the blade be a little off
 * @param borders where the art of a picture ends inside its bare border
 */
public record SheetGuides(List<Outline> safe, List<Outline> borders) {

	/** From the cut inwards, mm; common practice for cards and labels, no source. */
	public static final double USUAL_SAFE = 3;

	public SheetGuides {
		safe = List.copyOf(safe);
		borders = List.copyOf(borders);
	}

	/**
	 * Of the front of a sheet.
	 *
	 * @param distance from the cut to the safe area, mm
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static SheetGuides of(SheetFaces faces, double distance, Tolerance tolerance, Monitor monitor) {
		List<Outline> safe = new ArrayList<>();
		for (LaidPart part : faces.parts()) {
			add(part.room(), distance, safe, tolerance, monitor);
		}
		List<Outline> borders = new ArrayList<>();
		for (FaceItem item : faces.items(false)) {
			Picture picture = item.picture().orElse(null);
			if (picture != null && picture.getEdge() != null && picture.getEdge().getBorder() > 0) {
				add(item.element().region(), picture.getEdge().getBorder(), borders, tolerance, monitor);
			}
		}
		return new SheetGuides(safe, borders);
	}

	private static void add(Region region, double inwards, List<Outline> lines, Tolerance tolerance, Monitor monitor) {
		Region inner = Offset.of(region, -inwards, Corners.ROUND, Holes.KEEP, tolerance, monitor);
		if (!inner.isEmpty()) {
			lines.add(inner.toOutline());
		}
	}
}
