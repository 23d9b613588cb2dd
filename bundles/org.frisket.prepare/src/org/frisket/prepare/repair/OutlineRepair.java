package org.frisket.prepare.repair;

import java.util.List;

import org.frisket.geometry.repair.Movement;

/**
 * What would be put right in one outline.
 *
 * @param element  its id
 * @param before   its path data as it is, for which this was worked out
 * @param after    its path data as it would be, in its own frame
 * @param repairs  in the order in which they are done; never empty
 * @param movement how far anything moves, measured after the course
 */
public record OutlineRepair(String element, String before, String after, List<PlannedRepair> repairs,
		Movement movement) {

	public OutlineRepair {
		repairs = List.copyOf(repairs);
	}
}
