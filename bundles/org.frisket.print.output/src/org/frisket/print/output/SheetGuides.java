package org.frisket.print.output;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.RegionBoolean;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.OperationKind;
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
			add(cut(part, tolerance, monitor), distance, safe, tolerance, monitor);
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

	/** What is cut out; all that a part takes up where nothing is, for a print may reach beyond its cut. */
	private static Region cut(LaidPart part, Tolerance tolerance, Monitor monitor) {
		List<Region> cut = part.part().elements().stream().filter(element -> element.has(OperationKind.CUT))
				.map(element -> element.moved(part.place()).region()).filter(region -> !region.isEmpty()).toList();
		return cut.isEmpty() ? part.room() : new RegionBoolean().union(cut, tolerance, monitor);
	}

	private static void add(Region region, double inwards, List<Outline> lines, Tolerance tolerance, Monitor monitor) {
		Region inner = Offset.of(region, -inwards, Corners.ROUND, Holes.KEEP, tolerance, monitor);
		if (!inner.isEmpty()) {
			lines.add(inner.toOutline());
		}
	}
}
