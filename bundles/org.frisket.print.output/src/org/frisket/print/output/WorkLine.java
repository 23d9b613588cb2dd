package org.frisket.print.output;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedElement;
import org.frisket.sheets.LaidSheet;

/**
 * What a blade, a creasing tool or a pen does along some curves, for those who draw it.
 *
 * @param curves in mm on the sheet
 * @param dashed whether the curves are dashes already, which no pattern is to break further
 */
public record WorkLine(OperationKind kind, Outline curves, boolean dashed) {

	/** All that is worked on a side, in the order of the sheet; marks that are only shown are none of it. */
	public static List<WorkLine> of(LaidSheet side) {
		List<WorkLine> lines = new ArrayList<>();
		side.content().elements().forEach(element -> add(element, lines));
		return lines;
	}

	private static void add(PreparedElement element, List<WorkLine> lines) {
		Outline curves = element.region().toOutline().plus(new Outline(element.lines()));
		for (Operation operation : element.operations()) {
			if (operation.getKind() != OperationKind.PRINT) {
				List<Contour> dashes = element.dashes(operation);
				lines.add(dashes.isEmpty() ? new WorkLine(operation.getKind(), curves, false)
						: new WorkLine(operation.getKind(), new Outline(dashes), true));
			}
		}
	}
}
