package org.frisket.toolpath;

import java.util.Objects;

import org.frisket.geometry.Contour;

/**
 * A line of a sheet that is to be worked.
 *
 * @param id      how the caller knows it
 * @param job     whose it is; it pays for the time
 * @param part    what comes off the sheet as one; empty for none
 * @param contour in mm from the upper left corner of the sheet, y down
 * @param tool    id of the {@link ToolMotion}
 * @param passes  how often it is gone over, 1 at least
 */
public record Line(String id, String job, String part, Contour contour, Stage stage, String tool, int passes) {

	/** @throws IllegalArgumentException for no passes */
	public Line {
		Objects.requireNonNull(id);
		Objects.requireNonNull(job);
		Objects.requireNonNull(part);
		Objects.requireNonNull(contour);
		Objects.requireNonNull(stage);
		Objects.requireNonNull(tool);
		if (passes < 1) {
			throw new IllegalArgumentException("line " + id + ": " + passes + " passes");
		}
	}
}
