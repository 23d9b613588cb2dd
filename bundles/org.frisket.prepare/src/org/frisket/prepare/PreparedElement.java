package org.frisket.prepare;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.model.Element;
import org.frisket.model.OperationKind;

/**
 * What an element comes to: its clean region and the lines that enclose nothing, both in the job's frame with the
 * element's own transform applied.
 *
 * @param element   the element of the model it was made from
 * @param region    the closed part, clean
 * @param lines     contours that stayed open
 * @param uncleaned the same before cleaning
 * @param findings  what the steps noticed on the way
 */
public record PreparedElement(Element element, Region region, List<Contour> lines, Uncleaned uncleaned,
		List<Finding> findings) {

	public PreparedElement {
		lines = List.copyOf(lines);
		findings = List.copyOf(findings);
	}

	/** Whether any operation of the element is of this kind. */
	public boolean has(OperationKind kind) {
		return element.getOperations().stream().anyMatch(operation -> operation.getKind() == kind);
	}

	/** The curves as they were set or drawn, in the job's frame; made anew at each call. */
	public Outline source() {
		return uncleaned.curves().transformed(uncleaned.placement());
	}

	public Bounds bounds() {
		return lines.stream().map(Contour::bounds).reduce(region.bounds(), Bounds::with);
	}
}
