package org.frisket.ui.sheets.internal.run;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.run.RunCost;
import org.frisket.run.play.Playback;

/**
 * The run of one sheet as it was worked out.
 *
 * @param sheet    id of it; empty for a job as it lies on the bench
 * @param name     for people
 * @param content  what is worked
 * @param page     of the sheet, in mm in the frame of the content
 * @param cost     what it takes
 * @param findings what to mind about the sheet, the gravest first
 */
record SheetRun(String sheet, String name, PreparedJob content, Bounds page, Playback playback, RunCost cost,
		List<Finding> findings) {

	SheetRun {
		findings = List.copyOf(findings);
	}
}
