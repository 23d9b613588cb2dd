package org.frisket.geometry.clean;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Region;

/**
 * What became of an outline.
 *
 * @param open    contours that do not close and therefore bound nothing, as they came
 * @param repairs in the order of the steps; within a step in the order of the result
 */
public record CleanResult(Region region, List<Contour> open, List<Repair> repairs) {

	public CleanResult {
		open = List.copyOf(open);
		repairs = List.copyOf(repairs);
	}
}
