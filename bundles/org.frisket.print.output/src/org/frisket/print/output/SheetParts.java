package org.frisket.print.output;

import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedJob;

/**
 * What lies on a sheet that is to have marks.
 *
 * @param parts    seen from the front
 * @param twoSided whether anything is on the back of them
 */
public record SheetParts(List<PartOnSheet> parts, boolean twoSided) {

	/** Of a sheet that nothing is known of yet. */
	public static final SheetParts NONE = new SheetParts(List.of(), false);

	public SheetParts {
		parts = List.copyOf(parts);
	}

	/** For each sheet of a job. @param jobs as for {@link SheetFaces#of} */
	public static List<SheetParts> of(Job host, Map<String, PreparedJob> jobs, Tolerance tolerance, Monitor monitor) {
		return SheetFaces.of(host, jobs, false, tolerance, monitor).stream().map(faces -> new SheetParts(
				faces.parts().stream().map(PartOnSheet::of).toList(), !faces.items(true).isEmpty())).toList();
	}

	/** As they are seen on the sheet when it is turned over. */
	public List<PartOnSheet> over(TurnEdge turn, Sheet sheet) {
		Transform over = turn.over(sheet.getWidth(), sheet.getHeight());
		return parts.stream().map(part -> part.over(over)).toList();
	}
}
