package org.frisket.sheets;

import java.util.List;

import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;

/**
 * What a sheet comes to.
 *
 * @param content  all that is done on it, in mm from its upper left corner, on a layer for each stock and colour
 * @param parts    that lie on it
 * @param missing  placements whose part is no more
 * @param findings parts that overlap, lie too near to each other or to an edge, or stand over it
 */
public record LaidSheet(Sheet sheet, PreparedJob content, List<LaidPart> parts, List<Placement> missing,
		List<Finding> findings) {

	public LaidSheet {
		parts = List.copyOf(parts);
		missing = List.copyOf(missing);
		findings = List.copyOf(findings);
	}

	/** Of what lies on it, in mm². */
	public double partsArea() {
		return parts.stream().mapToDouble(part -> part.room().area()).sum();
	}

	/** The parts' share of the sheet, from 0 to 1. */
	public double utilisation() {
		double area = sheet.getWidth() * sheet.getHeight();
		return area > 0 ? partsArea() / area : 0;
	}
}
